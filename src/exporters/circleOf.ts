import { arcGeometry } from '../core/geom/arcGeometry';
import { distance } from '../core/geom/points';
import { ARC_RADIUS_MM } from '../core/geom/tolerances';
import type { Path, Point } from '../core/geom/types';

/** What the turns of a circle's arcs may miss a full turn by, radians. */
const FULL_TURN_ROUNDING = 1e-9;

/** The circle that a closed path of arcs about one centre goes once around; null for any other path. mm */
export const circleOf = ({
  start,
  segments,
  closed,
}: Path): { readonly centre: Point; readonly radius: number } | null => {
  const [first] = segments;
  if (!closed || first?.kind !== 'arc') return null;
  let [from, turn] = [start, 0];
  for (const segment of segments) {
    if (segment.kind !== 'arc' || distance(segment.centre, first.centre) > ARC_RADIUS_MM) return null;
    turn += arcGeometry(from, segment).sweep;
    from = segment.to;
  }
  if (Math.abs(Math.abs(turn) - 2 * Math.PI) > FULL_TURN_ROUNDING) return null;
  return { centre: first.centre, radius: arcGeometry(start, first).radius };
};
