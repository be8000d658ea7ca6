import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** No string wants its saddle farther from the octave line, mm. */
const FARTHEST = 20;

/**
 * The compensation of the outer strings as they were found in tune over a loose bridge; those between lie on the straight
 * line. treble, bass: setback behind the octave line, mm. across: where each string crosses the saddle, mm from the
 * centreline. Codes: tuned.far, tuned.across.
 */
export const takeTuned = (
  project: Project,
  { treble, bass, across }: { readonly treble: number; readonly bass: number; readonly across: readonly number[] },
): Result<Project> => {
  if (![treble, bass].every((setback) => Math.abs(setback) <= FARTHEST))
    return fail('compensation.own', 'tuned.far', `Expected both within ${FARTHEST} mm of the octave line.`);
  const { strings, compensation } = project;
  const [first, last] = [across[0] ?? 0, across.at(-1) ?? 0];
  if (across.length !== strings.length || first === last)
    return fail('strings', 'tuned.across', 'Expected the place of every string, and two that lie apart.');
  const slope = (treble - bass) / (first - last);
  const own = Object.fromEntries(strings.map(({ id }, index) => [id, treble + slope * ((across[index] ?? 0) - first)]));
  return ok({ ...project, compensation: { ...compensation, by: 'own', own } });
};
