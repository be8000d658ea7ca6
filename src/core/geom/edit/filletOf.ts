import { add, cross, distance, dot, scale, subtract } from '../points';
import { segmentDirections } from '../snap/segmentDirections';
import type { Point, Segment } from '../types';
import { type Motion, segmentMotion } from './segmentMotion';

/** An arc that rounds the corner between two segments: where it leaves the first and meets the second, and its centre. */
export interface Fillet {
  readonly firstT: number;
  readonly secondT: number;
  readonly centre: Point;
  readonly clockwise: boolean;
}

/** The radius is grown to its size in so many steps, each from where the last one ended. */
const GROWTH = 6;
const MOST_STEPS = 30;
/** Both circles' centres are one when they are this near, mm. */
const MET_MM = 1e-10;
/** How far beyond its end a segment may be used up, as a share of it: rounding alone. */
const USED_UP = 1e-9;

/** A place on the line at `off` (mm, + to the left with y up) beside a segment, and how it runs. */
function beside({ at, speed, bend }: Motion, off: number): { at: Point; speed: Point } {
  const pace = Math.hypot(speed.x, speed.y);
  const left = { x: -speed.y / pace, y: speed.x / pace };
  const stretch = 1 - (off * cross(speed, bend)) / pace ** 3;
  return { at: add(at, scale(left, off)), speed: scale(speed, stretch) };
}

/**
 * The arc of a radius (mm) tangent to both segments that meet at a corner, on its inner side; null when it does not fit on
 * them. Its centre lies where the lines that run at the radius beside both segments meet: found by Newton's steps.
 */
export function filletOf(start: Point, first: Segment, second: Segment, radius: number): Fillet | null {
  const { arriving } = segmentDirections(start, first);
  const { leaving } = segmentDirections(first.to, second);
  const turn = Math.atan2(cross(arriving, leaving), dot(arriving, leaving));
  const side = Math.sign(turn);
  const [one, other] = [segmentMotion(start, first), segmentMotion(first.to, second)];
  const pace = (motion: Motion): number => Math.hypot(motion.speed.x, motion.speed.y);
  // On straight sides the arc begins radius·tan(turn/2) from the corner.
  const reach = (size: number): number => size * Math.tan(Math.abs(turn) / 2);
  let [s, t] = [1, 0];
  for (let step = 1; step <= GROWTH; step += 1) {
    const size = (radius * step) / GROWTH;
    const guess: readonly [number, number] =
      step === 1
        ? [1 - reach(size) / pace(one(1)), reach(size) / pace(other(0))]
        : [1 - ((1 - s) * step) / (step - 1), (t * step) / (step - 1)];
    const met = meeting(one, other, side * size, guess);
    if (met === null) return null;
    [s, t] = met;
    if (!(s < 1 && s >= -USED_UP && t > 0 && t <= 1 + USED_UP)) return null;
  }
  const [a, b] = [beside(one(s), side * radius), beside(other(t), side * radius)];
  return { firstT: s, secondT: t, centre: scale(add(a.at, b.at), 0.5), clockwise: side > 0 };
}

function meeting(
  one: (t: number) => Motion,
  other: (t: number) => Motion,
  off: number,
  guess: readonly [number, number],
): readonly [number, number] | null {
  let [s, t] = guess;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const [a, b] = [beside(one(s), off), beside(other(t), off)];
    if (distance(a.at, b.at) <= MET_MM) return [s, t];
    const gap = subtract(b.at, a.at);
    const det = cross(a.speed, b.speed);
    s += cross(gap, b.speed) / det;
    t += cross(gap, a.speed) / det;
    if (!(Math.abs(s) < 3 && Math.abs(t) < 3)) return null;
  }
  return null;
}
