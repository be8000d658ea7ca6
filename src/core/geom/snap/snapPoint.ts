import { add, cross, distance, dot, scale, subtract } from '../points';
import type { Point } from '../types';
import type { SnapLine, Snapped } from './types';

/** Sine of the angle below which two lines count as one, so that they do not meet anywhere near. */
const PARALLEL = 0.02;

interface Ray {
  readonly through: Point;
  /** Of length 1. */
  readonly direction: Point;
}

const rayOf = (line: SnapLine): Ray | null => {
  if (line.kind === 'x') return { through: { x: line.value, y: 0 }, direction: { x: 0, y: 1 } };
  if (line.kind === 'y') return { through: { x: 0, y: line.value }, direction: { x: 1, y: 0 } };
  const length = Math.hypot(line.direction.x, line.direction.y);
  return length === 0 ? null : { through: line.through, direction: scale(line.direction, 1 / length) };
};

/** The foot of the perpendicular. A line along an axis gives its own figure, free of rounding. */
const footOn = (line: SnapLine, { through, direction }: Ray, at: Point): Point => {
  if (line.kind === 'x') return { x: line.value, y: at.y };
  if (line.kind === 'y') return { x: at.x, y: line.value };
  return add(through, scale(direction, dot(subtract(at, through), direction)));
};

const exact = (lines: readonly SnapLine[], at: Point): Point => {
  const x = lines.find((line) => line.kind === 'x');
  const y = lines.find((line) => line.kind === 'y');
  return { x: x?.kind === 'x' ? x.value : at.x, y: y?.kind === 'y' ? y.value : at.y };
};

const meet = (one: Ray, other: Ray): Point | null => {
  const turn = cross(one.direction, other.direction);
  if (Math.abs(turn) < PARALLEL) return null;
  return add(one.through, scale(one.direction, cross(subtract(other.through, one.through), other.direction) / turn));
};

/**
 * Where a point that is being moved comes to lie: on the nearest line within `reach` (mm), or where that line meets another
 * one if that place is within reach as well; else where it is. Of lines equally near the earlier one wins.
 */
export const snapPoint = (at: Point, lines: readonly SnapLine[], reach: number): Snapped => {
  const near = lines
    .flatMap((line) => {
      const ray = rayOf(line);
      if (ray === null) return [];
      const foot = footOn(line, ray, at);
      const off = distance(foot, at);
      return off <= reach ? [{ line, ray, foot, off }] : [];
    })
    .sort((one, other) => one.off - other.off);
  const [first] = near;
  if (first === undefined) return { at, reasons: [], lines: [] };
  for (const second of near.slice(1)) {
    const place = meet(first.ray, second.ray);
    if (place === null || distance(place, at) > reach) continue;
    const both = [first.line, second.line];
    return { at: exact(both, place), reasons: both.map(({ reason }) => reason), lines: both };
  }
  return { at: first.foot, reasons: [first.line.reason], lines: [first.line] };
};
