import { logGamma } from './logGamma';

const MOST_TERMS = 10_000;
const SMALLEST = 1e-300;

/**
 * The regularised incomplete beta function I_x(a, b): grows from 0 at x = 0 to 1 at x = 1. By its continued fraction
 * (NIST Digital Library of Mathematical Functions 8.17.22), evaluated by Lentz's method on the side where it converges.
 *
 * @param complement 1 − x, for a caller that knows it better than the subtraction gives it
 * @throws RangeError unless x lies within 0 to 1 and a and b are above 0
 */
export function incompleteBeta(x: number, a: number, b: number, complement = 1 - x): number {
  if (!(x >= 0 && x <= 1)) throw new RangeError(`Expected x within 0 to 1, got ${x}.`);
  if (x > (a + 1) / (a + b + 2)) return 1 - lowerPart(complement, b, a, x);
  return lowerPart(x, a, b, complement);
}

function lowerPart(x: number, a: number, b: number, complement: number): number {
  if (x === 0) return 0;
  const logFront = a * Math.log(x) + b * Math.log(complement) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return (Math.exp(logFront) / a) * continuedFraction(x, a, b);
}

/** 1/(1 + d₁/(1 + d₂/(1 + …))) */
function continuedFraction(x: number, a: number, b: number): number {
  const away = (value: number) => (Math.abs(value) < SMALLEST ? SMALLEST : value);
  let upper = 1;
  let lower = 1 / away(1 - ((a + b) * x) / (a + 1));
  let result = lower;
  for (let m = 1; m < MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    lower = 1 / away(1 + even * lower);
    upper = away(1 + even / upper);
    result *= lower * upper;
    lower = 1 / away(1 + odd * lower);
    upper = away(1 + odd / upper);
    result *= lower * upper;
    if (Math.abs(lower * upper - 1) < Number.EPSILON) break;
  }
  return result;
}
