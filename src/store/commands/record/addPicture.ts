import { MOST_PICTURES } from '../../../core/document/mostOfBuild';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** One more photo, by the id of its bytes, after the others. Codes: pictures.full, pictures.there. */
export const addPicture = (project: Project, id: string): Result<Project> => {
  const { pictures } = project.about;
  if (pictures.includes(id)) return fail('about.pictures', 'pictures.there', 'This photo is there already.');
  if (pictures.length >= MOST_PICTURES)
    return fail('about.pictures', 'pictures.full', `There is room for ${MOST_PICTURES} photos: take one away first.`);
  return ok({ ...project, about: { ...project.about, pictures: [...pictures, id] } });
};
