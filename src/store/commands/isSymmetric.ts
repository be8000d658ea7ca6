import { arcGeometry } from '../../core/geom/arcGeometry';
import { closedSegments } from '../../core/geom/closedSegments';
import { cubicPoint } from '../../core/geom/cubicPoint';
import { distanceToPath } from '../../core/geom/distanceToPath';
import { between } from '../../core/geom/points';
import type { Path, Point, Segment } from '../../core/geom/types';

/** How far the two sides of a symmetric outline may differ, mm: below what a scribed line shows. */
const SAME_MM = 0.01;

const SHARES = [0.25, 0.5, 0.75];

const at = (start: Point, segment: Segment, t: number): Point => {
  if (segment.kind === 'line') return between(start, segment.to, t);
  if (segment.kind === 'cubic') return cubicPoint(start, segment, t);
  const { radius, startAngle, sweep } = arcGeometry(start, segment);
  const angle = startAngle + sweep * t;
  return { x: segment.centre.x + radius * Math.cos(angle), y: segment.centre.y + radius * Math.sin(angle) };
};

/** Whether a closed outline is its own mirror image about the centreline (x → −x) within 0.01 mm, wherever it is looked at. */
export const isSymmetric = (path: Path): boolean =>
  closedSegments(path).every(({ start, segment }) =>
    [start, ...SHARES.map((t) => at(start, segment, t))].every(
      ({ x, y }) => distanceToPath(path, { x: -x, y }) <= SAME_MM,
    ),
  );
