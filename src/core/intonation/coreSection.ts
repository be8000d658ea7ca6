import { requirePositive } from './requirePositive';

/** What a core's cross-section gives to stretching and bending. */
export interface CoreSection {
  /** mm². */
  readonly area: number;
  /** Second moment of area about a line through the middle, mm⁴. */
  readonly secondMoment: number;
}

/**
 * Area and second moment of a round core (π·D²/4, π·D⁴/64) or a hexagonal one measured across its flats
 * (√3/2·w², 5√3/144·w⁴); a regular hexagon bends alike about every line through its middle.
 * @param size diameter, or width across the flats, mm, above 0
 * @throws RangeError when `size` is not a number above 0
 */
export function coreSection(size: number, shape: 'round' | 'hex'): CoreSection {
  requirePositive('size', size);
  const square = size * size;
  return shape === 'round'
    ? { area: (Math.PI / 4) * square, secondMoment: (Math.PI / 64) * square * square }
    : { area: (Math.sqrt(3) / 2) * square, secondMoment: ((5 * Math.sqrt(3)) / 144) * square * square };
}
