import { between } from '../../geom/points';
import type { Bounds, Point } from '../../geom/types';

/** The part of a straight line that lies within an upright rectangle; null when none of it does. After Liang and Barsky. */
export const clipToBounds = (from: Point, to: Point, bounds: Bounds): readonly [Point, Point] | null => {
  const sides = [
    { by: from.x - to.x, room: from.x - bounds.minX },
    { by: to.x - from.x, room: bounds.maxX - from.x },
    { by: from.y - to.y, room: from.y - bounds.minY },
    { by: to.y - from.y, room: bounds.maxY - from.y },
  ];
  let [begin, end] = [0, 1];
  for (const { by, room } of sides) {
    if (by === 0) {
      if (room < 0) return null;
    } else if (by < 0) begin = Math.max(begin, room / by);
    else end = Math.min(end, room / by);
  }
  return begin > end ? null : [between(from, to, begin), between(from, to, end)];
};
