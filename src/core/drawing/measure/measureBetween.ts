import { cross, dot, subtract } from '../../geom/points';
import type { Point } from '../../geom/types';

/** A distance told three ways, mm: in a straight line, across the centreline and along it; none is below 0. */
export interface Between {
  readonly straight: number;
  readonly across: number;
  readonly along: number;
}

/** How far apart two places are. */
export const measureBetween = (from: Point, to: Point): Between => {
  const way = subtract(to, from);
  return { straight: Math.hypot(way.x, way.y), across: Math.abs(way.x), along: Math.abs(way.y) };
};

/** The angle at a corner between the ways to two other places, radians from 0 to π; null when one of them is the corner. */
export const angleBetween = (from: Point, corner: Point, to: Point): number | null => {
  const [one, other] = [subtract(from, corner), subtract(to, corner)];
  if (Math.hypot(one.x, one.y) === 0 || Math.hypot(other.x, other.y) === 0) return null;
  return Math.atan2(Math.abs(cross(one, other)), dot(one, other));
};
