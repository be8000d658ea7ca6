import { arcGeometry } from '../../geom/arcGeometry';
import { distance } from '../../geom/points';
import type { Path, Point } from '../../geom/types';

/** Two points of an outline that are one but for rounding, mm. */
const SAME = 1e-6;

/** The arc of an outline with its ends in two places, in either order; null where there is none. */
export const arcBetween = (
  { start, segments }: Path,
  a: Point,
  b: Point,
): { readonly centre: Point; readonly radius: number; readonly angle: number } | null => {
  let from = start;
  for (const segment of segments) {
    const ends = [from, segment.to] as const;
    const joins = (one: Point, other: Point) => distance(ends[0], one) < SAME && distance(ends[1], other) < SAME;
    if (segment.kind === 'arc' && (joins(a, b) || joins(b, a))) {
      const { radius, startAngle, sweep } = arcGeometry(from, segment);
      return { centre: segment.centre, radius, angle: startAngle + sweep / 2 };
    }
    from = segment.to;
  }
  return null;
};
