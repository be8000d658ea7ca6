import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** Takes a photo away. Code: pictures.unknown. */
export const removePicture = (project: Project, id: string): Result<Project> => {
  const pictures = project.about.pictures.filter((each) => each !== id);
  return pictures.length < project.about.pictures.length
    ? ok({ ...project, about: { ...project.about, pictures } })
    : fail('about.pictures', 'pictures.unknown', 'There is no such photo.');
};
