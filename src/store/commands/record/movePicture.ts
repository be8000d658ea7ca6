import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** Puts a photo one place earlier (−1) or later (+1). Codes: pictures.unknown, pictures.end. */
export const movePicture = (project: Project, id: string, by: -1 | 1): Result<Project> => {
  const { pictures } = project.about;
  const from = pictures.indexOf(id);
  if (from < 0) return fail('about.pictures', 'pictures.unknown', 'There is no such photo.');
  const other = pictures[from + by];
  if (other === undefined)
    return fail('about.pictures', 'pictures.end', `This photo is the ${by < 0 ? 'first' : 'last'} already.`);
  const moved = pictures.map((each) => (each === id ? other : each === other ? id : each));
  return ok({ ...project, about: { ...project.about, pictures: moved } });
};
