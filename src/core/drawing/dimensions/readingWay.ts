import type { Point } from '../../geom/types';

/** Below this a direction counts as straight along the page. */
const LEVEL = 1e-9;

/** The way in which words along a line are read, from the left or, on an upright line, from below; unit vector. */
export const readingWay = (along: Point): Point => {
  const backward = along.x < -LEVEL || (Math.abs(along.x) <= LEVEL && along.y > 0);
  return backward ? { x: 0 - along.x, y: 0 - along.y } : along;
};
