import { ARC_TURN_PER_CUBIC } from '../core/geom/tolerances';
import type { Point, Segment } from '../core/geom/types';
import { applyMatrix, determinant, keepsCircles, type Matrix } from './matrix';

/** Keeps a turn of exactly 30° from being cut in two by rounding. */
const TURN_ROUNDING = 1e-9;

/**
 * The image of an arc of the unit circle under a matrix. Where circles stay circles it is made of true arcs of at most half
 * a turn each, else of cubics of at most 30° each, which stray by at most 3.7e-7 of the larger radius.
 *
 * @param start direction of the first point, radians
 * @param sweep turn, radians, + from +x toward +y; at most a full turn
 * @param end where the last piece must end, when that is known better than by the angles
 */
export const ellipseArc = (matrix: Matrix, start: number, sweep: number, end?: Point): Segment[] => {
  const round = keepsCircles(matrix);
  const widest = round ? Math.PI : ARC_TURN_PER_CUBIC;
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / widest - TURN_ROUNDING));
  const turn = sweep / count;
  const handle = (4 / 3) * Math.tan(turn / 4);
  const centre = applyMatrix(matrix, { x: 0, y: 0 });
  const clockwise = sweep > 0 === determinant(matrix) > 0;
  const at = (angle: number, along: number): Point => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return applyMatrix(matrix, { x: cos - sin * along, y: sin + cos * along });
  };
  return Array.from({ length: count }, (_, index): Segment => {
    const [from, next] = [start + turn * index, start + turn * (index + 1)];
    const to = index === count - 1 && end !== undefined ? end : at(next, 0);
    return round
      ? { kind: 'arc', to, centre, clockwise }
      : { kind: 'cubic', c1: at(from, handle), c2: at(next, -handle), to };
  });
};
