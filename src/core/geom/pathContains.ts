import { arcGeometry } from './arcGeometry';
import { closedSegments, type StartedSegment } from './closedSegments';
import { cubicPoint } from './cubicPoint';
import { pathToCubics } from './pathToCubics';
import { cross, subtract } from './points';
import { requirePath } from './requirePath';
import type { Bounds, Cubic, Line, Path, Point } from './types';

/** Steps that a cubic of at most 30° is cut into: the chords then stray by under 1e-4 of the radius. */
const STEPS = 16;

/**
 * Whether a point lies inside a closed path (by winding). Within 1e-4 of the local radius of a curved edge the answer may
 * go either way; `distanceToPath` tells how near the edge is.
 *
 * @throws RangeError when the path is not valid
 */
export function pathContains(path: Path, point: Point): boolean {
  requirePath(path);
  let winding = 0;
  for (const side of closedSegments(path)) winding += windingOf(side, point);
  return winding !== 0;
}

/** How often a segment crosses the level of the point on the side of greater x, + on the way to greater y. */
function windingOf(side: StartedSegment, point: Point): number {
  if (side.segment.kind !== 'arc' && misses(side.start.y, side.segment, point.y)) return 0;
  const { minX, maxX, minY, maxY } = boxOf(side);
  if (point.y < minY || point.y > maxY || point.x > maxX) return 0;
  // Wholly beyond the point, its ends alone say how often it crosses, on balance.
  const corners = point.x < minX ? [side.start, side.segment.to] : flatCorners(side);
  let winding = 0;
  let from = side.start;
  for (const to of corners.slice(1)) {
    const beyond = point.x < minX;
    const turn = beyond ? 0 : cross(subtract(to, from), subtract(point, from));
    if (from.y <= point.y && to.y > point.y && (beyond || turn > 0)) winding += 1;
    if (from.y > point.y && to.y <= point.y && (beyond || turn < 0)) winding -= 1;
    from = to;
  }
  return winding;
}

/** Whether a line or a cubic keeps to one side of a level: most of an outline does, and needs no closer look. */
function misses(start: number, segment: Line | Cubic, level: number): boolean {
  const { to } = segment;
  const [one, other] = segment.kind === 'cubic' ? [segment.c1.y, segment.c2.y] : [start, start];
  return (
    (start < level && to.y < level && one < level && other < level) ||
    (start > level && to.y > level && one > level && other > level)
  );
}

/** A box that holds a segment, not always the smallest. */
function boxOf({ start, segment }: StartedSegment): Bounds {
  if (segment.kind === 'arc') {
    const { radius } = arcGeometry(start, segment);
    const { x, y } = segment.centre;
    return { minX: x - radius, maxX: x + radius, minY: y - radius, maxY: y + radius };
  }
  const { to } = segment;
  const [one, other] = segment.kind === 'cubic' ? [segment.c1, segment.c2] : [start, to];
  return {
    minX: Math.min(start.x, one.x, other.x, to.x),
    maxX: Math.max(start.x, one.x, other.x, to.x),
    minY: Math.min(start.y, one.y, other.y, to.y),
    maxY: Math.max(start.y, one.y, other.y, to.y),
  };
}

/** The ends of a segment, with the chords between them that stand for a curve. */
function flatCorners({ start, segment }: StartedSegment): readonly Point[] {
  const corners: Point[] = [start];
  let from = start;
  for (const part of pathToCubics({ start, segments: [segment], closed: false }).segments) {
    if (part.kind === 'cubic')
      for (let step = 1; step < STEPS; step += 1) corners.push(cubicPoint(from, part, step / STEPS));
    corners.push(part.to);
    from = part.to;
  }
  return corners;
}
