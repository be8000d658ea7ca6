import type { Point } from '../core/geom/types';

/** x' = a·x + c·y + e, y' = b·x + d·y + f, in the order in which SVG writes a matrix. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`. */
export const compose = (outer: Matrix, inner: Matrix): Matrix => {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
};

export const moved = (x: number, y: number): Matrix => [1, 0, 0, 1, x, y];

export const scaled = (x: number, y: number): Matrix => [x, 0, 0, y, 0, 0];

/** angle: radians, + carries +x toward +y. Quarter turns are exact. */
export const turned = (angle: number): Matrix => {
  const quarters = angle / (Math.PI / 2);
  const whole = Math.abs(quarters - Math.round(quarters)) < 1e-12;
  const cos = whole ? Math.round(Math.cos(angle)) : Math.cos(angle);
  const sin = whole ? Math.round(Math.sin(angle)) : Math.sin(angle);
  return [cos, sin, -sin, cos, 0, 0];
};

export const applyMatrix = ([a, b, c, d, e, f]: Matrix, { x, y }: Point): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

/** Below 0 for a matrix that mirrors. */
export const determinant = ([a, b, c, d]: Matrix): number => a * d - b * c;

/** Two radii that differ by less than this share of them are one: 0.1 µm at 100 mm. */
const ROUND = 1e-6;

/** Whether circles stay circles: the image of the unit circle has two equal axes, so that its columns are equally long and square. */
export const keepsCircles = ([a, b, c, d]: Matrix): boolean => {
  const [one, other] = [a * a + b * b, c * c + d * d];
  const size = one + other;
  return size > 0 && Math.hypot(one - other, 2 * (a * c + b * d)) <= ROUND * size;
};
