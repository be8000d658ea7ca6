import type { Point } from '../geom/types';

/**
 * What a rule reads between two points that lie `rise` apart in height, mm: √(plan² + rise²).
 * Throws RangeError when a number is not finite.
 */
export const ruleDistance = (from: Point, to: Point, rise: number): number => {
  const reading = Math.hypot(to.x - from.x, to.y - from.y, rise);
  if (!Number.isFinite(reading)) throw new RangeError('A distance needs finite points and a finite rise.');
  return reading;
};
