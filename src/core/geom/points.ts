import type { Point } from './types';

/** a + b */
export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });

/** a − b: the way from b to a. */
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

/** The vector made `factor` times as long. */
export const scale = (a: Point, factor: number): Point => ({ x: a.x * factor, y: a.y * factor });

/** The vector turned about the origin by `angle` radians; + carries +x toward +y, clockwise as seen on the page. */
export const rotate = (a: Point, angle: number): Point => {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: a.x * cos - a.y * sin, y: a.x * sin + a.y * cos };
};

/** Straight distance between two points, mm. */
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** a × b = a.x·b.y − a.y·b.x: + when b lies clockwise of a as seen on the page. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;

/** a · b */
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** The point a share `t` of the way from a (0) to b (1). */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});
