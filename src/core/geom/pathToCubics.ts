import { arcGeometry } from './arcGeometry';
import { requirePath } from './requirePath';
import { ARC_TURN_PER_CUBIC } from './tolerances';
import type { Arc, Cubic, Path, Point } from './types';

/** Keeps a turn of exactly 30° from being cut in two by rounding. */
const TURN_ROUNDING = 1e-9;

/**
 * The same path with every arc drawn by cubics of at most 30° each; lines and cubics stay. The handles are
 * k = 4/3·tan(turn/4) of the radius long, which strays outward by at most 3.7e-7 of the radius.
 *
 * @throws RangeError when the path is not valid
 */
export function pathToCubics(path: Path): Path {
  requirePath(path);
  let start = path.start;
  const segments = path.segments.flatMap((segment) => {
    const from = start;
    start = segment.to;
    return segment.kind === 'arc' ? arcToCubics(from, segment) : [segment];
  });
  return { ...path, segments };
}

function arcToCubics(start: Point, arc: Arc): Cubic[] {
  const { radius, startAngle, sweep } = arcGeometry(start, arc);
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / ARC_TURN_PER_CUBIC - TURN_ROUNDING));
  const turn = sweep / count;
  const handle = radius * (4 / 3) * Math.tan(turn / 4);
  const along = (from: Point, angle: number, length: number): Point => ({
    x: from.x - Math.sin(angle) * length,
    y: from.y + Math.cos(angle) * length,
  });
  let from = start;
  return Array.from({ length: count }, (_, index) => {
    const angle = startAngle + turn * index;
    const next = angle + turn;
    const on = { x: arc.centre.x + radius * Math.cos(next), y: arc.centre.y + radius * Math.sin(next) };
    const to = index === count - 1 ? arc.to : on;
    const cubic: Cubic = { kind: 'cubic', c1: along(from, angle, handle), c2: along(to, next, -handle), to };
    from = to;
    return cubic;
  });
}
