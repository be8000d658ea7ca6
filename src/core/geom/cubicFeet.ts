import { bernsteinRoots } from './bernsteinRoots';
import { dot, subtract } from './points';
import type { Cubic, Point } from './types';

/**
 * Parameters, within 0 to 1, at which a cubic may lie nearest to a point: there (B − point)·B′ = 0, a polynomial of degree
 * 5, formed in Bernstein coefficients as the product of a cubic (controls seen from the point) and a quadratic
 * (differences of controls).
 */
export function cubicFeet(point: Point, start: Point, { c1, c2, to }: Cubic): readonly number[] {
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

/** The distance to the upright box of a cubic's controls, which hold the curve between them: it is never nearer. */
export function controlsDistance(point: Point, start: Point, { c1, c2, to }: Cubic): number {
  const x = beyond(point.x, Math.min(start.x, c1.x, c2.x, to.x), Math.max(start.x, c1.x, c2.x, to.x));
  return Math.hypot(x, beyond(point.y, Math.min(start.y, c1.y, c2.y, to.y), Math.max(start.y, c1.y, c2.y, to.y)));
}

/** How far outside of a range a coordinate lies. */
const beyond = (at: number, least: number, most: number): number => Math.max(0, least - at, at - most);
