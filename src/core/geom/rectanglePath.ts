import type { Path, Point } from './types';

/**
 * An upright rectangle, clockwise as seen on the page from its corner at `x`, `y` (the least of both), mm. The last
 * side ends at the start.
 *
 * @throws RangeError when a number is not finite, or a side is not longer than 0
 */
export function rectanglePath(x: number, y: number, width: number, height: number): Path {
  if (![x, y, width, height].every(Number.isFinite) || width <= 0 || height <= 0)
    throw new RangeError(`Expected a finite corner and sides above 0, got ${x}, ${y}, ${width} × ${height}.`);
  const start: Point = { x, y };
  const corners: Point[] = [{ x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }, start];
  return { start, segments: corners.map((to) => ({ kind: 'line', to })), closed: true };
}
