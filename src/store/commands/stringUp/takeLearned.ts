import { STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import type { Learned, Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

const [LEAST, MOST] = STRING_UP_LIMITS.learned;

/**
 * What earlier instruments taught copied into the project, or taken out of it (null). From then on it stands there as it
 * is: later builds change nothing. Codes: learned.string, learned.figure.
 */
export const takeLearned = (project: Project, learned: Learned | null): Result<Project> => {
  for (const [id, figure] of Object.entries(learned?.byString ?? {})) {
    if (!project.strings.some((each) => each.id === id))
      return fail('compensation.learned', 'learned.string', 'Expected a figure for a string of this instrument.');
    if (!(figure >= LEAST && figure <= MOST))
      return fail('compensation.learned', 'learned.figure', `Expected a length from ${LEAST} to ${MOST} mm.`);
  }
  return ok({ ...project, compensation: { ...project.compensation, learned } });
};
