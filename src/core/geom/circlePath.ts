import type { Path, Point } from './types';

/**
 * A circle as two half-circle arcs, clockwise as seen on the page from its point of greatest x, mm.
 *
 * @throws RangeError when a number is not finite, or the radius is not above 0
 */
export function circlePath(centre: Point, radius: number): Path {
  if (![centre.x, centre.y, radius].every(Number.isFinite) || radius <= 0)
    throw new RangeError(`Expected a finite centre and a radius above 0, got ${centre.x}, ${centre.y}, ${radius}.`);
  const start: Point = { x: centre.x + radius, y: centre.y };
  const opposite: Point = { x: centre.x - radius, y: centre.y };
  return {
    start,
    segments: [
      { kind: 'arc', to: opposite, centre, clockwise: true },
      { kind: 'arc', to: start, centre, clockwise: true },
    ],
    closed: true,
  };
}
