import { arcGeometry } from '../arcGeometry';
import { bernsteinRoots } from '../bernsteinRoots';
import { closedSegments } from '../closedSegments';
import { segmentPoint } from '../snap/segmentPoint';
import type { Path, Point, Segment } from '../types';

/** Where a path meets the centreline, x = 0. */
export interface Crossing {
  readonly segment: number;
  /** 0 for a node on the centreline, which counts for the segment that leaves it; else between 0 and 1. */
  readonly t: number;
  readonly y: number;
}

/** An arc that starts or ends on the centreline meets it there once, though rounding finds it a little beside. */
const ROUNDING = 1e-9;

/** Every place where a path meets the centreline, in the order of its segments; the implied closing line counts. */
export function centrelineCrossings(path: Path): readonly Crossing[] {
  return closedSegments(path).flatMap(({ start, segment }, index) => [
    ...(start.x === 0 ? [{ segment: index, t: 0, y: start.y }] : []),
    ...sharesOnAxis(start, segment).map((t) => ({ segment: index, t, y: segmentPoint(start, segment, t).y })),
  ]);
}

/** Where a segment meets the centreline between its ends. */
function sharesOnAxis(start: Point, segment: Segment): readonly number[] {
  const { to } = segment;
  switch (segment.kind) {
    case 'line':
      return start.x * to.x < 0 ? [start.x / (start.x - to.x)] : [];
    case 'cubic': {
      const across = [start.x, segment.c1.x, segment.c2.x, to.x];
      return Math.min(...across) < 0 && Math.max(...across) > 0 ? bernsteinRoots(across) : [];
    }
    case 'arc': {
      const { radius, startAngle, sweep } = arcGeometry(start, segment);
      const half = Math.acos(-segment.centre.x / radius);
      const full = 2 * Math.PI;
      return [half, -half]
        .map((angle) => {
          const turn = (angle - startAngle) * Math.sign(sweep);
          return (turn - full * Math.floor(turn / full)) / Math.abs(sweep);
        })
        .filter((t) => t > (start.x === 0 ? ROUNDING : 0) && t < 1 - (to.x === 0 ? ROUNDING : 0))
        .sort((one, other) => one - other);
    }
  }
}
