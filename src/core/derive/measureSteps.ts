import { auditLimitsInUse } from '../audit/auditLimitsInUse';
import type { Compensation, Instrument, InstrumentString, PlayingSetup, Project } from '../document/types';
import { surveyOf } from '../instrument/surveyOf';
import { taperOf } from '../instrument/taperOf';
import type { Scale, StringPlace } from '../instrument/types';
import { type StringModel, stringModels } from '../intonation/stringModels';
import type { Result } from '../result';
import { remember } from './remember';
import { withAll } from './withAll';

/** The steps of Measure: what the instrument is like, and where each string wants the saddle. Each remembered. */
export const createMeasureSteps = () => ({
  auditLimits: remember(auditLimitsInUse),
  survey: remember(surveyOf),
  taper: remember((instrument: Instrument, scale: Result<Scale>) =>
    scale.ok ? taperOf(instrument, scale.value) : null,
  ),
  models: remember(
    (
      strings: readonly InstrumentString[],
      places: Result<readonly StringPlace[]>,
      scale: Result<Scale>,
      setup: PlayingSetup,
      fit: Compensation['fit'],
      doubts: Project['doubts'],
    ): Result<readonly StringModel[]> =>
      withAll([places, scale], (at, { scaleLength }) => stringModels(strings, at, scaleLength, setup, fit, doubts)),
  ),
});
