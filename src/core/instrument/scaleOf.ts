import type { Instrument } from '../document/types';
import { ok, type Result } from '../result';
import { fitScale } from './fitScale';
import type { Scale } from './types';

/** Doubt of one reading with a half-millimetre steel rule, mm: common practice, no source. Like sigmas cancel in the fit. */
const RULE_DOUBT = 0.25;

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
  const values = scale.readings.map(({ value }) => value);
  return ok({
    scaleLength: fit.value.scaleLength,
    nutOffset: nut.offset + fit.value.nutOffset,
    from: 'readings',
    readings: values.length,
    readingSpread: Math.max(...values) - Math.min(...values),
  });
};
