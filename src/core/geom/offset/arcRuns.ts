import { arcPassesAngle } from '../arcPassesAngle';
import { between, cross, distance, subtract } from '../points';
import type { Point } from '../types';
import { FLAT_STRAY_MM } from './flatCorners';
import type { OffsetArc } from './offsetArcs';

/** How far the chords of an arc may stray from it, mm: those of a flattened arc, and of the round join at each corner. */
export const ON_ARC_MM = 1.5 * FLAT_STRAY_MM;

/** Fewer chords than this stay chords. */
const FEWEST_CHORDS = 3;

/** A run of sides that follow one arc, or none, from one corner to another; corners past the last one count on. */
export interface ArcRun {
  readonly from: number;
  readonly to: number;
  readonly arc: OffsetArc | null;
}

/**
 * The runs of a flattened closed outline in order. The first begins where one arc, or none, gives way to another. A side
 * follows an arc when it leads the same way, and both of its ends and its middle lie on the circle, the middle between the
 * ends of the arc.
 */
export function arcRuns(corners: readonly Point[], arcs: readonly OffsetArc[]): ArcRun[] {
  const followed = followedArcs(corners, arcs);
  const count = followed.length;
  const change = followed.findIndex((arc, index) => arc !== followed.at(index - 1));
  const first = Math.max(0, change);
  const runs: ArcRun[] = [];
  for (let index = first; index < first + count; index++) {
    const arc = followed[index % count] ?? null;
    const last = runs.at(-1);
    if (last !== undefined && last.arc === arc) runs[runs.length - 1] = { ...last, to: index + 1 };
    else runs.push({ from: index, to: index + 1, arc });
  }
  return runs.map((run) => (run.to - run.from < FEWEST_CHORDS ? { ...run, arc: null } : run));
}

function followedArcs(corners: readonly Point[], arcs: readonly OffsetArc[]): (OffsetArc | null)[] {
  let last: OffsetArc | null = null;
  return corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from;
    if (last === null || !follows(from, to, last)) last = arcs.find((arc) => follows(from, to, arc)) ?? null;
    return last;
  });
}

function follows(from: Point, to: Point, offset: OffsetArc): boolean {
  const middle = between(from, to, 0.5);
  if (![from, middle, to].every((point) => isOnCircle(point, offset))) return false;
  const { arc, geometry } = offset;
  const leads = cross(subtract(from, arc.centre), subtract(to, from)) > 0;
  return (
    leads === arc.clockwise && arcPassesAngle(geometry, Math.atan2(middle.y - arc.centre.y, middle.x - arc.centre.x))
  );
}

const isOnCircle = (point: Point, { arc, geometry }: OffsetArc): boolean =>
  Math.abs(point.x - arc.centre.x) <= geometry.radius + ON_ARC_MM &&
  Math.abs(distance(point, arc.centre) - geometry.radius) <= ON_ARC_MM;
