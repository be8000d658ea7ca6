import { add, cross, distance, dot, scale, subtract } from '../points';
import type { Point } from '../types';
import { type ArcRun, ON_ARC_MM } from './arcRuns';

/** A tangent point may have slid so far along its arc by flattening, mm. */
const SLID_MM = 0.1;

/** Sine of the angle below which two runs are tangent, so that rounding settles where they meet. */
const TANGENT = 0.01;

/** Newton's steps: each squares the miss, which flattening leaves below a micron. */
const STEPS = 3;

/**
 * Where two runs truly meet that flattening brought together in a corner: the end of an arc that goes over smoothly, else
 * where the arcs, or arc and side, cross. `earlier` and `later` are the corners beside.
 */
export function runJoint(corner: Point, before: ArcRun, earlier: Point, after: ArcRun, later: Point): Point {
  if (before.arc === null && after.arc === null) return corner;
  const one = (point: Point) => missOf(before, corner, earlier, point);
  const other = (point: Point) => missOf(after, corner, later, point);
  const ends = [before.arc?.arc.to, after.arc?.start].filter((point) => point !== undefined);
  const smooth = ends.find(
    (end) =>
      distance(corner, end) <= SLID_MM && Math.abs(one(end).by) <= ON_ARC_MM && Math.abs(other(end).by) <= ON_ARC_MM,
  );
  if (smooth !== undefined) return smooth;
  let point = corner;
  for (let step = 0; step < STEPS; step++) point = nearer(point, one(point), other(point));
  return point;
}

/** By how much a point misses a line or circle, and the direction (a unit) in which that grows. */
interface Miss {
  readonly by: number;
  readonly along: Point;
}

function missOf(run: ArcRun, corner: Point, beyond: Point, point: Point): Miss {
  if (run.arc !== null) {
    const ray = subtract(point, run.arc.arc.centre);
    const reach = Math.hypot(ray.x, ray.y);
    return { by: reach - run.arc.geometry.radius, along: scale(ray, 1 / reach) };
  }
  const side = subtract(beyond, corner);
  const along = scale({ x: -side.y, y: side.x }, 1 / Math.hypot(side.x, side.y));
  return { by: dot(along, subtract(point, corner)), along };
}

/** The point moved until, to the first order, it misses neither; where both are tangent, half of each. */
function nearer(point: Point, one: Miss, other: Miss): Point {
  const turn = cross(one.along, other.along);
  if (Math.abs(turn) < TANGENT)
    return subtract(point, scale(add(scale(one.along, one.by), scale(other.along, other.by)), 0.5));
  const x = (other.by * one.along.y - one.by * other.along.y) / turn;
  const y = (one.by * other.along.x - other.by * one.along.x) / turn;
  return add(point, { x, y });
}
