import { MOST_FRETS_READ, STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import type { Project } from '../../../core/document/types';
import { fretsRead } from '../../../core/learning/readingsOf';
import { fail, ok, type Result } from '../../../core/result';
import { withStringUp } from './withStringUp';

/** One reading; cents null where it was not read after all. */
export interface CentsRead {
  readonly id: string;
  readonly string: string;
  readonly fret: number;
  readonly cents: number | null;
}

const [LEAST, MOST] = STRING_UP_LIMITS.cents;
const [FIRST, LAST] = STRING_UP_LIMITS.fret;

const without = <Value>(record: Readonly<Record<string, Value>>, key: string): Readonly<Record<string, Value>> =>
  Object.fromEntries(Object.entries(record).filter(([each]) => each !== key));

/**
 * Cents of one string at one fret, + sharp, in place of what was there. Codes: stringUp.unknown, stringUp.string,
 * stringUp.fret, stringUp.frets, stringUp.cents.
 */
export const readCents = (project: Project, { id, string, fret, cents }: CentsRead): Result<Project> =>
  withStringUp(project, id, (stringUp) => {
    if (!project.strings.some((each) => each.id === string))
      return fail('build.stringUps', 'stringUp.string', 'There is no such string.');
    if (!(Number.isInteger(fret) && fret >= FIRST && fret <= LAST))
      return fail('build.stringUps', 'stringUp.fret', `Frets go from ${FIRST} to ${LAST}.`);
    const rest = without(stringUp.cents[string] ?? {}, String(fret));
    if (cents === null) {
      const others = without(stringUp.cents, string);
      return ok({ ...stringUp, cents: Object.keys(rest).length === 0 ? others : { ...others, [string]: rest } });
    }
    if (!(cents >= LEAST && cents <= MOST))
      return fail(
        'build.stringUps',
        'stringUp.cents',
        `Cents go from −${MOST} to +${MOST}: beyond that it is another note. Tune the open string first.`,
      );
    const frets = fretsRead(stringUp);
    if (!frets.includes(fret) && frets.length >= MOST_FRETS_READ)
      return fail('build.stringUps', 'stringUp.frets', `One string-up holds readings at ${MOST_FRETS_READ} frets.`);
    return ok({ ...stringUp, cents: { ...stringUp.cents, [string]: { ...rest, [fret]: cents } } });
  });
