import { centsPerMm } from '../intonation/centsPerMm';

/** One fretted note against equal temperament with its open string in tune: cents, + sharp. */
export interface FretReading {
  readonly fret: number;
  readonly cents: number;
}

/** What readings of one string ask of its break point. */
export interface SaddleTravel {
  /** mm, + away from the nut (the notes were sharp). */
  readonly travel: number;
  /** ± of it in 19 cases of 20, mm, from the tuner alone. */
  readonly doubt: number;
}

/**
 * The travel that brings the frets read nearest to in tune: least squares over them with the first-order sensitivity of
 * `centsPerMm`; for one fret that is `saddleTravelFor`. Each reading has the tuner's doubt, and all of a string share that
 * of its open note: correlated input quantities after JCGM 100:2008 (GUM), 5.2. Null without a reading.
 *
 * @param tuner ± of one note, cents, in 19 cases of 20
 * @throws RangeError when a figure is not finite, or a scale length or fret not above 0
 */
export const travelOfCents = (
  readings: readonly FretReading[],
  scaleLength: number,
  tuner: number,
): SaddleTravel | null => {
  if (readings.length === 0) return null;
  if (![tuner, ...readings.map(({ cents }) => cents)].every(Number.isFinite))
    throw new RangeError('Expected finite cents and a finite doubt of the tuner.');
  const gains = readings.map(({ fret }) => centsPerMm(scaleLength, fret));
  const squares = gains.reduce((sum, gain) => sum + gain * gain, 0);
  const weights = gains.map((gain) => gain / squares);
  const own = weights.reduce((sum, weight) => sum + weight * weight, 0);
  const open = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    travel: readings.reduce((sum, { cents }, index) => sum + cents * (weights[index] ?? 0), 0),
    doubt: tuner * Math.hypot(Math.sqrt(own), open),
  };
};
