import { fail, ok, type Result } from '../result';

/** A rule reading from the nut datum to a fret, with the doubt of one reading (one sigma), mm. */
export interface FretReading {
  readonly fret: number;
  readonly value: number;
  readonly sigma: number;
}

export interface ScaleFit {
  readonly scaleLength: number;
  /** − when the nut datum lies nearer the bridge than the frets were laid out for. */
  readonly nutOffset: number;
  readonly sigma: { readonly scaleLength: number; readonly nutOffset: number };
  /** Read less fitted, in the order of the readings. */
  readonly residuals: readonly number[];
}

const checked = (readings: readonly FretReading[]): Result<readonly FretReading[]> => {
  if (readings.length === 0) return fail('', 'scale.none', 'Read at least one distance from the nut to a fret.');
  for (const [index, { fret, value, sigma }] of readings.entries()) {
    if (!Number.isFinite(fret) || fret <= 0)
      return fail(`${index}.fret`, 'scale.fret', 'A reading goes to a fret from the 1st up.');
    if (!Number.isFinite(value) || value <= 0)
      return fail(`${index}.value`, 'scale.value', 'A reading is a length above 0.');
    if (!Number.isFinite(sigma) || sigma <= 0)
      return fail(`${index}.sigma`, 'scale.sigma', 'The doubt of a reading is above 0.');
  }
  return ok(readings);
};

/**
 * Scale length and nut offset, mm, by weighted least squares of value = scale · (1 − 2^(−fret/12)) + offset.
 * Readings to one fret alone cannot tell the offset: it is 0 then, with no doubt. Codes: scale.none, scale.fret,
 * scale.value, scale.sigma. Source: the normal equations of a straight line, NIST/SEMATECH e-Handbook 4.4.3.
 */
export const fitScale = (readings: readonly FretReading[]): Result<ScaleFit> => {
  const good = checked(readings);
  if (!good.ok) return good;
  const share = (fret: number): number => 1 - 2 ** (-fret / 12);
  const oneFret = readings.every(({ fret }) => fret === readings[0]?.fret);
  // Sums about the weighted mean, which keeps the digits that raw sums lose.
  let weights = 0;
  let meanShare = 0;
  let meanValue = 0;
  for (const { fret, value, sigma } of readings) {
    const weight = 1 / sigma ** 2;
    weights += weight;
    meanShare += weight * share(fret);
    meanValue += weight * value;
  }
  meanShare /= weights;
  meanValue /= weights;
  if (oneFret) {
    const scaleLength = meanValue / meanShare;
    const residuals = readings.map(({ fret, value }) => value - scaleLength * share(fret));
    return ok({
      scaleLength,
      nutOffset: 0,
      sigma: { scaleLength: 1 / (Math.sqrt(weights) * meanShare), nutOffset: 0 },
      residuals,
    });
  }
  let squares = 0;
  let products = 0;
  for (const { fret, value, sigma } of readings) {
    const weight = 1 / sigma ** 2;
    squares += weight * (share(fret) - meanShare) ** 2;
    products += weight * (share(fret) - meanShare) * (value - meanValue);
  }
  const scaleLength = products / squares;
  const nutOffset = meanValue - scaleLength * meanShare;
  return ok({
    scaleLength,
    nutOffset,
    sigma: {
      scaleLength: 1 / Math.sqrt(squares),
      nutOffset: Math.sqrt(1 / weights + meanShare ** 2 / squares),
    },
    residuals: readings.map(({ fret, value }) => value - scaleLength * share(fret) - nutOffset),
  });
};
