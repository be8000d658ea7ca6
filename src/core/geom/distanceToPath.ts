import { arcGeometry } from './arcGeometry';
import { arcPassesAngle } from './arcPassesAngle';
import { closedSegments } from './closedSegments';
import { controlsDistance, cubicFeet } from './cubicFeet';
import { cubicPoint } from './cubicPoint';
import { between, distance, dot, subtract } from './points';
import { requirePath } from './requirePath';
import type { Arc, Cubic, Path, Point, Segment } from './types';

/**
 * How far a point lies from the nearest point of a path, mm, inside or outside; the implied closing line counts. Exact
 * for lines and arcs, within 1e-9 of the size for cubics.
 *
 * @throws RangeError when the path is not valid or the point is not finite
 */
export function distanceToPath(path: Path, point: Point): number {
  requirePath(path);
  if (!Number.isFinite(point.x) || !Number.isFinite(point.y))
    throw new RangeError(`Expected a finite point, got ${point.x}, ${point.y}.`);
  const sides = closedSegments(path);
  // The nearest node first: it rules out most curves before they are looked at closely.
  let nearest = distance(point, path.start);
  for (const { segment } of sides) nearest = Math.min(nearest, distance(point, segment.to));
  for (const { start, segment } of sides) {
    if (segment.kind === 'cubic' && controlsDistance(point, start, segment) >= nearest) continue;
    nearest = Math.min(nearest, innerDistance(point, start, segment));
  }
  return nearest;
}

/** The distance to the part between the ends; may be that to an end, or infinite, when an end is nearer. */
function innerDistance(point: Point, start: Point, segment: Segment): number {
  switch (segment.kind) {
    case 'line':
      return lineDistance(point, start, segment.to);
    case 'arc':
      return arcDistance(point, start, segment);
    case 'cubic':
      return cubicDistance(point, start, segment);
  }
}

function lineDistance(point: Point, start: Point, to: Point): number {
  const along = subtract(to, start);
  const length = dot(along, along);
  if (length === 0) return Number.POSITIVE_INFINITY;
  const t = Math.min(1, Math.max(0, dot(subtract(point, start), along) / length));
  return distance(point, between(start, to, t));
}

function arcDistance(point: Point, start: Point, arc: Arc): number {
  const geometry = arcGeometry(start, arc);
  const angle = Math.atan2(point.y - arc.centre.y, point.x - arc.centre.x);
  const facing = arcPassesAngle(geometry, angle);
  return facing ? Math.abs(distance(point, arc.centre) - geometry.radius) : Number.POSITIVE_INFINITY;
}

function cubicDistance(point: Point, start: Point, cubic: Cubic): number {
  return Math.min(...cubicFeet(point, start, cubic).map((t) => distance(point, cubicPoint(start, cubic, t))));
}
