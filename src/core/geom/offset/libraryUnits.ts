import { pathBounds } from '../pathBounds';
import type { Path, Point } from '../types';

/** The offset library counts in whole units: 10⁻⁶ mm each. */
export const UNITS_PER_MM = 1e6;

/** Where the library's units of a path are counted from, mm: its middle, in whole mm so that round figures stay round. */
export const middleOf = (path: Path): Point => {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  return { x: Math.round((minX + maxX) / 2), y: Math.round((minY + maxY) / 2) };
};

/** A point in the library's units from `middle`. */
export const toUnits = ({ x, y }: Point, middle: Point): Point => ({
  x: Math.round((x - middle.x) * UNITS_PER_MM),
  y: Math.round((y - middle.y) * UNITS_PER_MM),
});

/** The library's units from `middle` as a point, mm. */
export const fromUnits = ({ x, y }: Point, middle: Point): Point => ({
  x: x / UNITS_PER_MM + middle.x,
  y: y / UNITS_PER_MM + middle.y,
});
