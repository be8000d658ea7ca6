import { arcGeometry } from '../arcGeometry';
import { closedSegments, type StartedSegment } from '../closedSegments';
import { flatCorners } from '../offset/flatCorners';
import { selfCrossing } from '../offset/selfCrossing';
import { add, distance, dot, scale, subtract } from '../points';
import { segmentDirections } from '../snap/segmentDirections';
import { COINCIDENT_MM } from '../tolerances';
import type { Bounds, Path, Point } from '../types';

/**
 * A point near which a closed path crosses or touches itself, mm; null when it is simple, to half a micron. Only segments
 * that may meet others are looked at closely: the rest are held apart by the points that hold them (hullOf).
 */
export function crossingOf(path: Path): Point | null {
  const sides = closedSegments(path);
  const close = doubtful(sides);
  if (close.size === 0) return null;
  const corners = sides.flatMap((side, index) => (close.has(index) ? flatCorners([side]) : [side.start]));
  return selfCrossing(corners.filter((at, index) => distance(at, corners.at(index - 1) ?? at) > COINCIDENT_MM));
}

/** The most that an arc may turn to be held by three points, radians. */
const HELD_TURN = 2;

/** The points whose convex hull holds a segment, from its start to its end; null for an arc that turns too far. */
function hullOf({ start, segment }: StartedSegment): readonly Point[] | null {
  const { to } = segment;
  if (segment.kind === 'line') return [start, to];
  if (segment.kind === 'cubic') return [start, segment.c1, segment.c2, to];
  const turn = Math.abs(arcGeometry(start, segment).sweep);
  if (turn > HELD_TURN) return null;
  // Where the tangents at both ends meet.
  return [start, add(start, scale(segmentDirections(start, segment).leaving, Math.tan(turn / 2))), to];
}

/** The numbers of segments that are not shown to keep clear of all others, and of themselves, by their hulls. */
function doubtful(sides: readonly StartedSegment[]): ReadonlySet<number> {
  const close = new Set<number>();
  const hulls = sides.map(hullOf);
  const boxes = hulls.map((hull) => (hull === null ? EVERYWHERE : boxOf(hull)));
  for (const [index, hull] of hulls.entries()) {
    const next = (index + 1) % hulls.length;
    const following = hulls[next] ?? null;
    if (hull === null || !runsOneWay(hull)) close.add(index);
    if (hull === null || following === null || !partAtJoint(hull, following)) close.add(index).add(next);
  }
  const order = boxes.map((box, index) => ({ box, index })).sort((one, other) => one.box.minX - other.box.minX);
  let open: { box: Bounds; index: number }[] = [];
  for (const each of order) {
    open = open.filter(({ box }) => box.maxX >= each.box.minX);
    for (const { box, index } of open) {
      if (box.maxY < each.box.minY || each.box.maxY < box.minY) continue;
      const apart = Math.abs(index - each.index);
      if (apart > 1 && apart < sides.length - 1) close.add(index).add(each.index);
    }
    open.push(each);
  }
  return close;
}

const EVERYWHERE: Bounds = { minX: -Infinity, minY: -Infinity, maxX: Infinity, maxY: Infinity };

function boxOf(hull: readonly Point[]): Bounds {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of hull) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Whether the way from point to point of a hull never goes back along its chord: then the segment cannot meet itself. */
function runsOneWay(hull: readonly Point[]): boolean {
  const [start, end] = [hull[0] as Point, hull.at(-1) as Point];
  const chord = subtract(end, start);
  if (dot(chord, chord) === 0) return false;
  return hull.every((point, index) => index === 0 || dot(subtract(point, hull[index - 1] as Point), chord) >= 0);
}

/** Whether a line through the joint of two neighbours has all of one on its one side and all of the other on the other. */
function partAtJoint(hull: readonly Point[], following: readonly Point[]): boolean {
  const joint = following[0] as Point;
  const from = lastOther(hull, joint);
  const to = lastOther([...following].reverse(), joint);
  if (from === null || to === null) return false;
  const way = add(unit(subtract(joint, from)), unit(subtract(to, joint)));
  const off = (point: Point): number => dot(subtract(point, joint), way);
  const isJoint = (point: Point): boolean => point.x === joint.x && point.y === joint.y;
  return (
    hull.every((point) => isJoint(point) || off(point) < 0) &&
    following.every((point) => isJoint(point) || off(point) > 0)
  );
}

/** The last point that is not the joint. */
const lastOther = (points: readonly Point[], joint: Point): Point | null =>
  points.filter(({ x, y }) => x !== joint.x || y !== joint.y).at(-1) ?? null;

const unit = (way: Point): Point => scale(way, 1 / Math.hypot(way.x, way.y));
