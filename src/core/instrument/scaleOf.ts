import type { Instrument } from '../document/types';
import { ok, type Result } from '../result';
import { fitScale } from './fitScale';
import { RULE_DOUBT } from './ruleDoubt';
import type { Scale } from './types';

/** The scale in use: by the readings when they count, else as entered. */
export const scaleOf = (instrument: Instrument): Result<Scale> => {
  const { scale, nut } = instrument;
  if (scale.from === 'entered')
    return ok({ scaleLength: scale.entered, nutOffset: nut.offset, from: 'entered', readings: 0, readingSpread: 0 });
  // A known nut offset is taken off first, so that readings to the 12th fret alone give the scale that the frets have.
  const fit = fitScale(
    scale.readings.map(({ fret, value }) => ({ fret, value: value - nut.offset, sigma: RULE_DOUBT })),
  );
  if (!fit.ok) return fit;
  const values = scale.readings.flatMap(({ fret, value }) => (fret === 12 ? [value] : []));
  return ok({
    scaleLength: fit.value.scaleLength,
    nutOffset: nut.offset + fit.value.nutOffset,
    from: 'readings',
    readings: scale.readings.length,
    readingSpread: values.length === 0 ? 0 : Math.max(...values) - Math.min(...values),
  });
};
