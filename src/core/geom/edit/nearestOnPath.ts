import { arcGeometry } from '../arcGeometry';
import { arcPassesAngle } from '../arcPassesAngle';
import { closedSegments } from '../closedSegments';
import { controlsDistance, cubicFeet } from '../cubicFeet';
import { distance, dot, subtract } from '../points';
import { segmentPoint } from '../snap/segmentPoint';
import type { Arc, Path, Point, Segment } from '../types';

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
      return cubicFeet(point, start, segment);
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
