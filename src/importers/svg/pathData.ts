import svgpath from 'svgpath';
import type { Path, Point, Segment } from '../../core/geom/types';
import { ellipseArc } from '../ellipseArc';
import { applyMatrix, compose, type Matrix, moved, scaled, turned } from '../matrix';

/** A quadratic curve as the cubic that it is: its handles reach two thirds of the way to the one control. */
const fromQuadratic = (from: Point, control: Point, to: Point): Segment => {
  const toward = (end: Point): Point => ({
    x: end.x + (2 / 3) * (control.x - end.x),
    y: end.y + (2 / 3) * (control.y - end.y),
  });
  return { kind: 'cubic', c1: toward(from), c2: toward(to), to };
};

/**
 * An arc of path data: from its ends to its centre as SVG 2 has it (appendix B.2.4), radii that are too short for the ends
 * made as long as they must be.
 */
const fromArc = (
  matrix: Matrix,
  from: Point,
  rx: number,
  ry: number,
  degrees: number,
  large: boolean,
  positive: boolean,
  to: Point,
): Segment[] => {
  if (from.x === to.x && from.y === to.y) return [];
  const placed = applyMatrix(matrix, to);
  if (rx === 0 || ry === 0) return [{ kind: 'line', to: placed }];
  const tilt = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  const [halfX, halfY] = [(from.x - to.x) / 2, (from.y - to.y) / 2];
  // Half of the chord as seen from the ellipse's own axes, in radii.
  const [wide, high] = [Math.abs(rx), Math.abs(ry)];
  const [u, v] = [(cos * halfX + sin * halfY) / wide, (cos * halfY - sin * halfX) / high];
  const half = Math.hypot(u, v);
  const grown = Math.max(1, half);
  const off = (large === positive ? -1 : 1) * Math.sqrt(Math.max(0, 1 - (half / grown) ** 2));
  const [centreU, centreV] = [(off * v) / half, (-off * u) / half];
  const start = Math.atan2(v / grown - centreV, u / grown - centreU);
  const end = Math.atan2(-v / grown - centreV, -u / grown - centreU);
  const turn = end - start;
  const sweep = positive ? (turn < 0 ? turn + 2 * Math.PI : turn) : turn > 0 ? turn - 2 * Math.PI : turn;
  const axes = compose(turned(tilt), scaled(wide * grown, high * grown));
  const centre: Point = {
    x: (from.x + to.x) / 2 + axes[0] * centreU + axes[2] * centreV,
    y: (from.y + to.y) / 2 + axes[1] * centreU + axes[3] * centreV,
  };
  return ellipseArc(compose(matrix, compose(moved(centre.x, centre.y), axes)), start, sweep, placed);
};

/** The paths that path data draws under a matrix; null when it is damaged. */
export const pathData = (data: string, matrix: Matrix): Path[] | null => {
  const parsed = svgpath(data);
  if ((parsed as unknown as { err: string }).err !== '') return null;
  const at = (x: number, y: number): Point => applyMatrix(matrix, { x, y });
  const paths: Path[] = [];
  let start = at(0, 0);
  let segments: Segment[] = [];
  let sound = true;
  const finish = (closed: boolean): void => {
    if (segments.length > 0) paths.push({ start, segments, closed });
    segments = [];
  };
  parsed
    .abs()
    .unshort()
    .iterate((command, _, x, y) => {
      switch (command[0]) {
        case 'M':
          finish(false);
          start = at(command[1], command[2]);
          return;
        case 'L':
          segments.push({ kind: 'line', to: at(command[1], command[2]) });
          return;
        case 'H':
          segments.push({ kind: 'line', to: at(command[1], y) });
          return;
        case 'V':
          segments.push({ kind: 'line', to: at(x, command[1]) });
          return;
        case 'C': {
          const [, x1, y1, x2, y2, toX, toY] = command;
          segments.push({ kind: 'cubic', c1: at(x1, y1), c2: at(x2, y2), to: at(toX, toY) });
          return;
        }
        case 'Q':
          segments.push(fromQuadratic(at(x, y), at(command[1], command[2]), at(command[3], command[4])));
          return;
        case 'A': {
          const [, rx, ry, degrees, large, positive, toX, toY] = command;
          const to = { x: toX, y: toY };
          segments.push(...fromArc(matrix, { x, y }, rx, ry, degrees, large === 1, positive === 1, to));
          return;
        }
        case 'Z':
        case 'z':
          finish(true);
          return;
        default:
          sound = false;
      }
    });
  finish(false);
  return sound ? paths : null;
};
