import type { Point } from '../types';

/** The area of a polygon, + clockwise as seen on the page; counted from its first corner, where rounding is least. */
export const polygonArea = (corners: readonly Point[]): number => {
  const from = corners[0] ?? { x: 0, y: 0 };
  return corners.reduce((sum, corner, index) => {
    const before = corners.at(index - 1) ?? corner;
    return sum + ((before.x - from.x) * (corner.y - from.y) - (corner.x - from.x) * (before.y - from.y)) / 2;
  }, 0);
};
