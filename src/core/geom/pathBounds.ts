import { arcGeometry } from './arcGeometry';
import { arcPassesAngle } from './arcPassesAngle';
import { bernsteinRoots } from './bernsteinRoots';
import { cubicPoint } from './cubicPoint';
import { requirePath } from './requirePath';
import type { Arc, Bounds, Cubic, Path, Point, Segment } from './types';

/**
 * The smallest upright rectangle around a path, mm: the true extremes of arcs and cubics, not their control points.
 *
 * @throws RangeError when the path is not valid
 */
export function pathBounds(path: Path): Bounds {
  requirePath(path);
  let start = path.start;
  let bounds: Bounds = { minX: start.x, minY: start.y, maxX: start.x, maxY: start.y };
  for (const segment of path.segments) {
    for (const point of [segment.to, ...innerExtremes(start, segment)]) bounds = including(bounds, point);
    start = segment.to;
  }
  return bounds;
}

const including = (bounds: Bounds, { x, y }: Point): Bounds => ({
  minX: Math.min(bounds.minX, x),
  minY: Math.min(bounds.minY, y),
  maxX: Math.max(bounds.maxX, x),
  maxY: Math.max(bounds.maxY, y),
});

function innerExtremes(start: Point, segment: Segment): Point[] {
  switch (segment.kind) {
    case 'line':
      return [];
    case 'arc':
      return arcExtremes(start, segment);
    case 'cubic':
      return cubicExtremes(start, segment);
  }
}

function arcExtremes(start: Point, arc: Arc): Point[] {
  const geometry = arcGeometry(start, arc);
  const { x, y } = arc.centre;
  const r = geometry.radius;
  const quarters = [
    { x: x + r, y },
    { x, y: y + r },
    { x: x - r, y },
    { x, y: y - r },
  ];
  return quarters.filter((_, quarter) => arcPassesAngle(geometry, (quarter * Math.PI) / 2));
}

/** Where the derivative, a quadratic whose Bernstein coefficients are the differences of the controls, is zero. */
function cubicExtremes(start: Point, cubic: Cubic): Point[] {
  const { c1, c2, to } = cubic;
  const across = bernsteinRoots([c1.x - start.x, c2.x - c1.x, to.x - c2.x]);
  const along = bernsteinRoots([c1.y - start.y, c2.y - c1.y, to.y - c2.y]);
  return [...across, ...along].map((t) => cubicPoint(start, cubic, t));
}
