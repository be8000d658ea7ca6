/** Digits kept before a half is looked for: 3 fewer than a double can hold, so that the noise of arithmetic cannot tip one. */
const SIGNIFICANT_DIGITS = 14;

/**
 * Rounds to a number of decimals as a person would on paper: half goes away from zero, and 1.005 is one and five
 * thousandths although the double behind it lies a little below. Never answers −0.
 *
 * @param decimals whole, 0 to 12
 * @throws RangeError when `value` is not finite or `decimals` is out of range
 */
export function roundDecimal(value: number, decimals: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`Expected a finite number to round, got ${value}.`);
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 12)
    throw new RangeError(`Expected 0 to 12 decimals, got ${decimals}.`);
  const [digits, exponent] = Math.abs(value)
    .toExponential(SIGNIFICANT_DIGITS - 1)
    .split('e');
  const shifted = Math.round(Number(`${digits}e${Number(exponent) + decimals}`));
  const size = Number(`${shifted}e-${decimals}`);
  return value < 0 && size > 0 ? -size : size;
}
