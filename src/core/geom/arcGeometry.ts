import { distance } from './points';
import type { Arc, Point } from './types';

/** An arc told by radius and angles. */
export interface ArcGeometry {
  /** mm */
  readonly radius: number;
  /** Direction from the centre to the start: atan2(y, x), radians in (−π, π]. */
  readonly startAngle: number;
  /** Turn from start to end, radians: in (0, 2π) when clockwise as seen on the page, else in (−2π, 0). */
  readonly sweep: number;
}

/**
 * Radius and angles of an arc that leaves `start`. The radius is the mean of those at both ends.
 *
 * @throws RangeError when a coordinate is not finite
 */
export function arcGeometry(start: Point, arc: Arc): ArcGeometry {
  const startAngle = Math.atan2(start.y - arc.centre.y, start.x - arc.centre.x);
  const endAngle = Math.atan2(arc.to.y - arc.centre.y, arc.to.x - arc.centre.x);
  const radius = (distance(start, arc.centre) + distance(arc.to, arc.centre)) / 2;
  if (!Number.isFinite(radius)) throw new RangeError('Expected an arc with finite coordinates.');
  const turn = arc.clockwise ? endAngle - startAngle : startAngle - endAngle;
  const size = turn < 0 ? turn + 2 * Math.PI : turn;
  return { radius, startAngle, sweep: arc.clockwise ? size : -size };
}
