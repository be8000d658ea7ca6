import { studentT } from '../numeric/studentT';
import { shrunk } from './shrunk';
import { SPREAD_WORTH } from './usualSpread';

/** What is held before any instrument is read: one sigma each, mm. */
export interface Belief {
  /** How far the model may be off for this maker's instruments. */
  readonly model: number;
  /** How much one instrument differs from the next. */
  readonly spread: number;
}

/** What this maker's instruments say of the next one, for one string. mm, + farther from the nut than the model says. */
export interface NextEstimate {
  readonly count: number;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  /** How much of the mean is taken, 0 to 1: the rest is drawn toward the model. */
  readonly factor: number;
  readonly estimate: number;
  /** The next instrument, read as these were, comes out within this of the estimate in 19 cases of 20. */
  readonly doubt: number;
  /** The same for 99 cases of 100. */
  readonly doubt99: number;
  /** Between instruments as it looks now, one sigma. */
  readonly spread: number;
}

const CERTAIN = { doubt: 0.95, doubt99: 0.99 } as const;

/**
 * Normal readings about a maker's own mean, which is itself normal about the model: the normal model with two levels of
 * A. Gelman and others, Bayesian Data Analysis, 3rd ed. (2013), 2.5 and 5.4. The spread between instruments is pooled from
 * those read and the one held before, which counts for `SPREAD_WORTH` of them; the ± is Student's for the sum (3.2 there).
 *
 * Holds for instruments that differ from each other by chance alone, each with one first reading, none of them kept back
 * because of how it came out. Null without an instrument.
 *
 * @throws RangeError when a figure is not finite or a belief not above 0
 */
export const estimateNext = (errors: readonly number[], { model, spread: held }: Belief): NextEstimate | null => {
  const count = errors.length;
  if (count === 0) return null;
  if (!errors.every(Number.isFinite)) throw new RangeError('Expected finite differences.');
  if (!(model > 0 && held > 0 && Number.isFinite(model) && Number.isFinite(held)))
    throw new RangeError('Expected beliefs above 0.');
  const mean = errors.reduce((sum, error) => sum + error, 0) / count;
  const squares = errors.reduce((sum, error) => sum + (error - mean) ** 2, 0);
  const degrees = SPREAD_WORTH + count - 1;
  const variance = (SPREAD_WORTH * held ** 2 + squares) / degrees;
  const factor = model ** 2 / (model ** 2 + variance / count);
  const next = Math.sqrt(variance * (1 + factor / count));
  return {
    count,
    mean,
    low: Math.min(...errors),
    high: Math.max(...errors),
    factor,
    estimate: shrunk(mean, 0, factor),
    doubt: studentT(CERTAIN.doubt, degrees) * next,
    doubt99: studentT(CERTAIN.doubt99, degrees) * next,
    spread: Math.sqrt(variance),
  };
};
