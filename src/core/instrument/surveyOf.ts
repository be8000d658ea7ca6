import type { Instrument } from '../document/types';
import type { Result } from '../result';
import { fretSurvey } from './fretSurvey';
import { RULE_DOUBT } from './ruleDoubt';
import type { FretSurvey } from './surveyTypes';

/** The survey of the board by the readings that count; null while the scale is as entered. A known nut offset is taken off first. */
export const surveyOf = (instrument: Instrument): Result<FretSurvey> | null => {
  const { scale, nut } = instrument;
  if (scale.from === 'entered') return null;
  return fretSurvey(
    scale.readings.map(({ fret, value }) => ({ fret, value: value - nut.offset })),
    { ruleDoubt: RULE_DOUBT },
  );
};
