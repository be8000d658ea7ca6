import type { StringUp } from '../../../core/document/buildTypes';
import { MOST_STRING_UPS } from '../../../core/document/mostOfBuild';
import { STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from '../place/withBuild';

/** ± of a clip-on or strobe tuner as makers tell it, cents: common practice, no source. */
const USUAL_TUNER = 1;

const [LEAST, MOST] = STRING_UP_LIMITS.setback;

/** What a string-up begins with: when, and what the plan was then. */
export type BegunStringUp = Pick<StringUp, 'id' | 'at' | 'crown' | 'predicted' | 'stood'>;

/**
 * A string-up of which nothing was read yet; the tuner and the meter are those of the one before. A model becomes an
 * instrument by its first. Codes: stringUp.many, stringUp.taken, stringUp.plan.
 */
export const addStringUp = (project: Project, begun: BegunStringUp): Result<Project> =>
  withBuild(project, (build) => {
    const { stringUps } = build;
    if (stringUps.length >= MOST_STRING_UPS)
      return fail('build.stringUps', 'stringUp.many', `There is room for ${MOST_STRING_UPS} string-ups.`);
    if (stringUps.some(({ id }) => id === begun.id))
      return fail('build.stringUps', 'stringUp.taken', 'There is a string-up of that name already.');
    const setbacks = [...Object.values(begun.predicted), ...Object.values(begun.stood)];
    if (!setbacks.every((setback) => setback >= LEAST && setback <= MOST))
      return fail('build.stringUps', 'stringUp.plan', `Expected a plan within ${MOST} mm of the octave line.`);
    const before = stringUps.at(-1);
    const stringUp: StringUp = {
      ...begun,
      stage: before === undefined ? 'first' : 'settled',
      tuner: before?.tuner ?? USUAL_TUNER,
      cents: {},
      action: { treble: null, bass: null },
      relief: null,
      humidity: null,
      meter: before?.meter ?? '',
      note: '',
    };
    return ok({ ...build, stringUps: [...stringUps, stringUp] });
  });
