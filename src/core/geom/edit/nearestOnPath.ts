import { arcGeometry } from '../arcGeometry';
import { arcPassesAngle } from '../arcPassesAngle';
import { bernsteinRoots } from '../bernsteinRoots';
import { closedSegments } from '../closedSegments';
import { distance, dot, subtract } from '../points';
import { segmentPoint } from '../snap/segmentPoint';
import type { Arc, Cubic, Path, Point, Segment } from '../types';

/** The place of a path that lies nearest to a point. */
export interface NearestPlace {
  readonly segment: number;
  /** Share of a line or of an arc's turn, parameter of a cubic; 0 to 1. */
  readonly t: number;
  readonly at: Point;
  /** mm */
  readonly distance: number;
}

/**
 * The place of a path nearest to a point, the implied closing line among its segments; the first of several equally near.
 * Exact for lines and arcs; for cubics the roots of (B − point)·B′, to the rounding of t. A path without segments is its start.
 *
 * @throws RangeError when a coordinate of an arc is not finite
 */
export function nearestOnPath(path: Path, point: Point): NearestPlace {
  let nearest: NearestPlace = { segment: 0, t: 0, at: path.start, distance: distance(point, path.start) };
  for (const [segment, side] of closedSegments(path).entries()) {
    if (side.segment.kind === 'cubic' && controlsDistance(point, side.start, side.segment) >= nearest.distance)
      continue;
    for (const t of [...footsOf(point, side.start, side.segment), 1]) {
      const at = t === 1 ? side.segment.to : segmentPoint(side.start, side.segment, t);
      const off = distance(point, at);
      if (off < nearest.distance) nearest = { segment, t, at, distance: off };
    }
  }
  return nearest;
}

/** Where between its ends a segment may be nearest. */
function footsOf(point: Point, start: Point, segment: Segment): readonly number[] {
  switch (segment.kind) {
    case 'line':
      return lineFoot(point, start, segment.to);
    case 'arc':
      return arcFoot(point, start, segment);
    case 'cubic':
      return cubicFoots(point, start, segment);
  }
}

function lineFoot(point: Point, start: Point, to: Point): readonly number[] {
  const along = subtract(to, start);
  const t = dot(subtract(point, start), along) / dot(along, along);
  return t > 0 && t < 1 ? [t] : [];
}

function arcFoot(point: Point, start: Point, arc: Arc): readonly number[] {
  const geometry = arcGeometry(start, arc);
  const angle = Math.atan2(point.y - arc.centre.y, point.x - arc.centre.x);
  if (!arcPassesAngle(geometry, angle)) return [];
  const full = 2 * Math.PI;
  const turn = (angle - geometry.startAngle) * Math.sign(geometry.sweep);
  return [(turn - full * Math.floor(turn / full)) / Math.abs(geometry.sweep)];
}

/** A cubic is never nearer than the upright box of its controls. */
function controlsDistance(point: Point, start: Point, { c1, c2, to }: Cubic): number {
  const beyond = (at: number, ...controls: number[]): number =>
    Math.max(0, Math.min(...controls) - at, at - Math.max(...controls));
  return Math.hypot(beyond(point.x, start.x, c1.x, c2.x, to.x), beyond(point.y, start.y, c1.y, c2.y, to.y));
}

/** (B − point)·B′ = 0 has degree 5; its Bernstein coefficients are those of a cubic times a quadratic. */
function cubicFoots(point: Point, start: Point, { c1, c2, to }: Cubic): readonly number[] {
  const [p0, p1, p2, p3] = [subtract(start, point), subtract(c1, point), subtract(c2, point), subtract(to, point)];
  const [d0, d1, d2] = [subtract(c1, start), subtract(c2, c1), subtract(to, c2)];
  return bernsteinRoots([
    dot(p0, d0),
    (2 * dot(p0, d1) + 3 * dot(p1, d0)) / 5,
    (dot(p0, d2) + 6 * dot(p1, d1) + 3 * dot(p2, d0)) / 10,
    (3 * dot(p1, d2) + 6 * dot(p2, d1) + dot(p3, d0)) / 10,
    (3 * dot(p2, d2) + 2 * dot(p3, d1)) / 5,
    dot(p3, d2),
  ]);
}
