import { cross, subtract } from '../points';
import type { Point } from '../types';

interface Side {
  readonly index: number;
  readonly a: Point;
  readonly b: Point;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/**
 * Where a closed polygon crosses or touches itself: a point near there, or null when it is simple. The sides are taken by
 * growing x, and each is held against those that still reach as far.
 */
export function selfCrossing(corners: readonly Point[]): Point | null {
  const sides = corners.map((a, index) => side(a, corners[(index + 1) % corners.length] ?? a, index));
  sides.sort((one, other) => one.minX - other.minX);
  let open: Side[] = [];
  for (const next of sides) {
    open = open.filter((other) => other.maxX >= next.minX);
    for (const other of open) if (meet(other, next, corners.length)) return nearest(other, next);
    open.push(next);
  }
  return null;
}

const side = (a: Point, b: Point, index: number): Side => ({
  index,
  a,
  b,
  minX: Math.min(a.x, b.x),
  maxX: Math.max(a.x, b.x),
  minY: Math.min(a.y, b.y),
  maxY: Math.max(a.y, b.y),
});

function meet(one: Side, other: Side, count: number): boolean {
  if (one.maxY < other.minY || other.maxY < one.minY) return false;
  const apart = Math.abs(one.index - other.index);
  // Neighbours share a corner; they overlap only where the outline turns back on itself, and then encloses nothing there.
  if (apart === 1 || apart === count - 1) return false;
  return straddles(one, other) && straddles(other, one);
}

/** Whether the ends of the other side lie on both sides of the line through this one, or on it. */
function straddles(one: Side, other: Side): boolean {
  const along = subtract(one.b, one.a);
  const start = cross(along, subtract(other.a, one.a));
  const end = cross(along, subtract(other.b, one.a));
  return (start <= 0 && end >= 0) || (start >= 0 && end <= 0);
}

/** Where the lines through both sides cross; for parallel ones the start of the later side. */
function nearest(one: Side, other: Side): Point {
  const along = subtract(one.b, one.a);
  const across = subtract(other.b, other.a);
  const turn = cross(along, across);
  if (turn === 0) return other.a;
  const t = cross(subtract(other.a, one.a), across) / turn;
  return { x: one.a.x + along.x * t, y: one.a.y + along.y * t };
}
