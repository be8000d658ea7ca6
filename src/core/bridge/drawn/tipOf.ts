import { arcGeometry } from '../../geom/arcGeometry';
import { arcPassesAngle } from '../../geom/arcPassesAngle';
import { bernsteinRoots } from '../../geom/bernsteinRoots';
import { closedSegments } from '../../geom/closedSegments';
import { cubicPoint } from '../../geom/cubicPoint';
import type { Path, Point, Segment } from '../../geom/types';

/** Places as far out as the farthest within this are all at the tip, mm. */
const AT_TIP_MM = 1e-6;

/** Where an outline reaches farthest to one side (+1 treble, −1 bass); of a straight tip the middle. */
export function tipOf(path: Path, sign: 1 | -1): Point {
  let out = Number.NEGATIVE_INFINITY;
  const far = closedSegments(path).flatMap(({ start, segment }) => [start, ...farthest(start, segment, sign)]);
  for (const { x } of far) out = Math.max(out, sign * x);
  const along = far.filter(({ x }) => sign * x >= out - AT_TIP_MM).map(({ y }) => y);
  return { x: sign * out, y: (Math.min(...along) + Math.max(...along)) / 2 };
}

function farthest(start: Point, segment: Segment, sign: 1 | -1): readonly Point[] {
  switch (segment.kind) {
    case 'line':
      return [];
    case 'arc': {
      const geometry = arcGeometry(start, segment);
      const passes = arcPassesAngle(geometry, sign > 0 ? 0 : Math.PI);
      return passes ? [{ x: segment.centre.x + sign * geometry.radius, y: segment.centre.y }] : [];
    }
    case 'cubic': {
      const { c1, c2, to } = segment;
      return bernsteinRoots([c1.x - start.x, c2.x - c1.x, to.x - c2.x]).map((t) => cubicPoint(start, segment, t));
    }
  }
}
