/**
 * A number for a file: a point before its decimals, no zeros at their end, no exponent, no −0, whatever the language of the
 * machine.
 *
 * @param decimals whole, 0 to 12
 * @throws RangeError when `value` is not finite, or of 1e21 and more
 */
export function plainNumber(value: number, decimals: number): string {
  if (!(Math.abs(value) < 1e21)) throw new RangeError(`Expected a finite number to write, got ${value}.`);
  const fixed = value.toFixed(decimals);
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return short === '-0' ? '0' : short;
}
