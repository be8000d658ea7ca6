import { requirePositive } from './requirePositive';

/**
 * Open tension of a string, N: T0 = μ·(2·L·f)², the ideal string.
 * @param massPerLength g/m, whole string, above 0
 * @param length sounding length, mm, above 0
 * @param frequency Hz, above 0
 * @throws RangeError when an argument is not a number above 0
 */
export function stringTension(massPerLength: number, length: number, frequency: number): number {
  requirePositive('massPerLength', massPerLength);
  requirePositive('length', length);
  requirePositive('frequency', frequency);
  return massPerLength * 1e-9 * (2 * length * frequency) ** 2;
}
