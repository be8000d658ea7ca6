import { distanceToPath } from '../../geom/distanceToPath';
import { distance } from '../../geom/points';
import { leastOnPath } from '../../geom/snap/leastOnPath';
import type { Path, Point } from '../../geom/types';

/** Where two edges come nearest to each other. */
export interface Gap {
  readonly gap: number;
  /** On the first edge, and on the second. */
  readonly from: Point;
  readonly to: Point;
}

/** The least distance between two edges, mm, whether one lies inside the other or beside it; 0 where they cross. */
export const leastGap = (one: Path, other: Path): Gap => {
  if (one.segments.length > other.segments.length) {
    const { gap, from, to } = leastGap(other, one);
    return { gap, from: to, to: from };
  }
  const from = leastOnPath(one, (point) => distanceToPath(other, point));
  const to = leastOnPath(other, (point) => distance(point, from.at));
  return { gap: from.value, from: from.at, to: to.at };
};
