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
  const before = known.get(path);
  if (before !== undefined) return before;
  const bounds = boundsOf(requirePath(path));
  known.set(path, bounds);
  return bounds;
}

/** A path never changes, and many ask for the bounds of the same one. */
const known = new WeakMap<Path, Bounds>();

function boundsOf(path: Path): Bounds {
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
  const roots = (...controls: readonly [number, number, number, number]): readonly number[] => {
    const [p0, p1, p2, p3] = controls;
    const [low, high] = [Math.min(p0, p3), Math.max(p0, p3)];
    // The curve stays between its controls: where the ends lie outermost they are the extremes.
    if (Math.min(p1, p2) >= low && Math.max(p1, p2) <= high) return [];
    return bernsteinRoots([p1 - p0, p2 - p1, p3 - p2]);
  };
  const across = roots(start.x, c1.x, c2.x, to.x);
  const along = roots(start.y, c1.y, c2.y, to.y);
  return [...across, ...along].map((t) => cubicPoint(start, cubic, t));
}
