import { arcGeometry } from './arcGeometry';
import { arcPassesAngle } from './arcPassesAngle';
import { bernsteinRoots } from './bernsteinRoots';
import { closedSegments } from './closedSegments';
import { cubicPoint } from './cubicPoint';
import { cross, dot, subtract } from './points';
import { requirePath } from './requirePath';
import { COINCIDENT_MM } from './tolerances';
import type { Path, Point } from './types';

/**
 * Where a straight line meets a path: how far along `direction` (of length 1) from `origin`, mm, in growing order. A node
 * on the line counts, more than once where segments share it; a segment that lies in the line counts by its ends.
 *
 * @throws RangeError when the path is not valid
 */
export function lineCrossings(path: Path, origin: Point, direction: Point): number[] {
  requirePath(path);
  const beside = (point: Point): number => cross(direction, subtract(point, origin));
  const along = (point: Point): number => dot(direction, subtract(point, origin));
  const found: number[] = [];
  for (const { start, segment } of closedSegments(path)) {
    const { to } = segment;
    const [from, until] = [beside(start), beside(to)];
    if (Math.abs(until) <= COINCIDENT_MM) found.push(along(to));
    if (segment.kind === 'line') {
      if (from * until < 0) found.push(along(start) + ((along(to) - along(start)) * from) / (from - until));
    } else if (segment.kind === 'arc') {
      const arc = arcGeometry(start, segment);
      const off = beside(segment.centre);
      if (Math.abs(off) > arc.radius) continue;
      const half = Math.sqrt(arc.radius ** 2 - off ** 2);
      const middle = along(segment.centre);
      for (const at of [middle - half, middle + half]) {
        const x = origin.x + direction.x * at - segment.centre.x;
        const y = origin.y + direction.y * at - segment.centre.y;
        if (arcPassesAngle(arc, Math.atan2(y, x))) found.push(at);
      }
    } else
      for (const t of bernsteinRoots([from, beside(segment.c1), beside(segment.c2), until]))
        found.push(along(cubicPoint(start, segment, t)));
  }
  return found.sort((one, other) => one - other);
}
