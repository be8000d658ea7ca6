import { between } from './points';
import type { Cubic, Point } from './types';

/** The point of a cubic at t from 0 (start) to 1 (end), by de Casteljau's construction. */
export function cubicPoint(start: Point, cubic: Cubic, t: number): Point {
  const middle = between(cubic.c1, cubic.c2, t);
  const before = between(between(start, cubic.c1, t), middle, t);
  const after = between(middle, between(cubic.c2, cubic.to, t), t);
  return between(before, after, t);
}
