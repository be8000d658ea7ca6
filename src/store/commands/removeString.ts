import { FEWEST_STRINGS } from '../../core/document/stringCount';
import type { Project } from '../../core/document/types';
import { fail, ok, type Result } from '../../core/result';
import { numberCourses } from './numberCourses';

/** One string fewer, its own compensation with it. Codes: strings.few, strings.unknown. */
export const removeString = (project: Project, index: number): Result<Project> => {
  const gone = project.strings[index];
  if (gone === undefined) return fail('strings', 'strings.unknown', 'There is no such string.');
  if (project.strings.length <= FEWEST_STRINGS)
    return fail('strings', 'strings.few', `An instrument has at least ${FEWEST_STRINGS} strings here.`);
  const own = Object.fromEntries(Object.entries(project.compensation.own).filter(([id]) => id !== gone.id));
  return ok({
    ...project,
    strings: numberCourses(project.strings.filter((_, place) => place !== index)),
    compensation: { ...project.compensation, own },
  });
};
