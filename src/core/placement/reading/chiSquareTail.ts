import { logGamma } from '../../numeric/logGamma';

const MOST_TERMS = 500;

/**
 * How likely readings that are as good as their sigmas say would fit as badly as this, or worse: the upper tail of the
 * chi-square distribution, 1 − P(freedom/2, chiSquare/2), by the series of the incomplete gamma function (Abramowitz and
 * Stegun, 6.5.29). At least 0; below 1e-12 it is only small.
 *
 * @throws RangeError unless chiSquare is finite and at least 0, and freedom a whole number above 0
 */
export const chiSquareTail = (chiSquare: number, freedom: number): number => {
  if (!Number.isFinite(chiSquare) || chiSquare < 0 || !Number.isInteger(freedom) || freedom < 1)
    throw new RangeError(`Expected a sum of squares and whole degrees of freedom, got ${chiSquare} and ${freedom}.`);
  const [a, x] = [freedom / 2, chiSquare / 2];
  if (x === 0) return 1;
  // So far out the tail is nothing, and the series long.
  if (x > a + 200) return 0;
  let term = 1;
  let sum = 1;
  for (let n = 1; n < MOST_TERMS && term > sum * 1e-16; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return Math.max(0, 1 - sum * Math.exp(a * Math.log(x) - x - logGamma(a + 1)));
};
