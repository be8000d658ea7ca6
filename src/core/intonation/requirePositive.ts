/** @throws RangeError unless `value` is a finite number above 0 */
export function requirePositive(name: string, value: number): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name}: expected a number above 0, got ${value}`);
  }
}
