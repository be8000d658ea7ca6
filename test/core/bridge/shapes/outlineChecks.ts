import { expect } from 'vitest';
import type { Path, Point, Segment } from '../../../../src/core/geom/types';

const unit = (x: number, y: number): Point => ({ x: x / Math.hypot(x, y), y: y / Math.hypot(x, y) });

/** Directions in which a line or arc leaves its start and reaches its end. */
const directions = (start: Point, segment: Segment): readonly [Point, Point] => {
  if (segment.kind === 'arc') {
    const turn = segment.clockwise ? 1 : -1;
    const tangent = ({ x, y }: Point): Point => unit(-turn * (y - segment.centre.y), turn * (x - segment.centre.x));
    return [tangent(start), tangent(segment.to)];
  }
  const straight = unit(segment.to.x - start.x, segment.to.y - start.y);
  return [straight, straight];
};

/** Angles in degrees by which the outline turns where one segment meets the next, at joints that touch an arc. */
export const kinksAtArcs = (path: Path): readonly number[] => {
  const starts = [path.start, ...path.segments.map(({ to }) => to)];
  const all = path.segments.map((segment, index) => ({
    arc: segment.kind === 'arc',
    ends: directions(starts[index] ?? path.start, segment),
  }));
  return all.flatMap(({ arc, ends }, index) => {
    const next = all[(index + 1) % all.length];
    if (next === undefined || !(arc || next.arc)) return [];
    const [from, to] = [ends[1], next.ends[0]];
    return [(Math.atan2(from.x * to.y - from.y * to.x, from.x * to.x + from.y * to.y) * 180) / Math.PI];
  });
};

/** Every joint and arc centre has its like on the other side of the centreline. */
export const expectSymmetric = (path: Path): void => {
  const points = path.segments.flatMap((segment) =>
    segment.kind === 'arc' ? [segment.to, segment.centre] : [segment.to],
  );
  const joints = [path.start, ...points];
  for (const { x, y } of joints) expect(joints.some((other) => Math.hypot(other.x + x, other.y - y) < 1e-9)).toBe(true);
};

/** Simpson's rule on an even number of steps. */
export const simpson = (f: (x: number) => number, from: number, to: number, steps = 2000): number => {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
};

/** Where a rising function crosses 0, by halving. */
export const crossing = (f: (x: number) => number, low: number, high: number): number => {
  let [a, b] = [low, high];
  for (let i = 0; i < 200; i += 1) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};
