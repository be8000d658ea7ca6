/** Coefficients of Lanczos' series with g = 7 and nine terms (Godfrey 2001), good to about 15 digits. */
const G = 7;
const FIRST = 0.99999999999980993;
const TERMS = [
  676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/**
 * Natural logarithm of the gamma function.
 *
 * @throws RangeError unless x is finite and above 0
 */
export function logGamma(x: number): number {
  if (!Number.isFinite(x) || x <= 0) throw new RangeError(`Expected a finite number above 0, got ${x}.`);
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const series = TERMS.reduce((total, term, i) => total + term / (x + i), FIRST);
  const base = x + G - 0.5;
  return Math.log(2 * Math.PI) / 2 + (x - 0.5) * Math.log(base) - base + Math.log(series);
}
