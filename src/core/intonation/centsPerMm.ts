import { CENTS_PER_NEPER } from './centsPerNeper';
import { requirePositive } from './requirePositive';

/**
 * How much a fretted note rises against the open string, cents, per mm of saddle travel toward the nut:
 * C·(2^(n/12) − 1)/X0, to first order.
 * @param scaleLength mm, above 0
 * @param fret above 0
 * @throws RangeError when an argument is not a number above 0
 */
export function centsPerMm(scaleLength: number, fret: number): number {
  requirePositive('scaleLength', scaleLength);
  requirePositive('fret', fret);
  return (CENTS_PER_NEPER * (2 ** (fret / 12) - 1)) / scaleLength;
}
