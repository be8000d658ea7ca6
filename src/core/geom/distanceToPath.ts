import { arcGeometry } from './arcGeometry';
import { arcPassesAngle } from './arcPassesAngle';
import { bernsteinRoots } from './bernsteinRoots';
import { closedSegments } from './closedSegments';
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

/** The distance to the upright box of a cubic's controls, which hold the curve between them: it is never nearer. */
function controlsDistance(point: Point, start: Point, { c1, c2, to }: Cubic): number {
  const x = beyond(point.x, Math.min(start.x, c1.x, c2.x, to.x), Math.max(start.x, c1.x, c2.x, to.x));
  return Math.hypot(x, beyond(point.y, Math.min(start.y, c1.y, c2.y, to.y), Math.max(start.y, c1.y, c2.y, to.y)));
}

/** How far outside of a range a coordinate lies. */
const beyond = (at: number, least: number, most: number): number => Math.max(0, least - at, at - most);

/**
 * A nearest point inside the curve B(t) has (B − point)·B′ = 0: a polynomial of degree 5, formed in Bernstein
 * coefficients as the product of a cubic (controls seen from the point) and a quadratic (differences of controls).
 */
function cubicDistance(point: Point, start: Point, cubic: Cubic): number {
  const { c1, c2, to } = cubic;
  const [p0, p1, p2, p3] = [subtract(start, point), subtract(c1, point), subtract(c2, point), subtract(to, point)];
  const [d0, d1, d2] = [subtract(c1, start), subtract(c2, c1), subtract(to, c2)];
  const roots = bernsteinRoots([
    dot(p0, d0),
    (2 * dot(p0, d1) + 3 * dot(p1, d0)) / 5,
    (dot(p0, d2) + 6 * dot(p1, d1) + 3 * dot(p2, d0)) / 10,
    (3 * dot(p1, d2) + 6 * dot(p2, d1) + dot(p3, d0)) / 10,
    (3 * dot(p2, d2) + 2 * dot(p3, d1)) / 5,
    dot(p3, d2),
  ]);
  return Math.min(...roots.map((t) => distance(point, cubicPoint(start, cubic, t))));
}
