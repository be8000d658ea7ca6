import { add, between, distance, dot, scale, subtract } from '../points';
import type { Arc, Path, Point, Segment } from '../types';
import { arcRuns } from './arcRuns';
import type { OffsetArc } from './offsetArcs';
import { runJoint } from './runJoint';

/** An arc that turns more is written as two, radians. */
const MOST_TURN = 4;

/**
 * A closed path through the corners of a flattened outline, its true arcs put back: sides that follow one of `arcs` become
 * that arc. Its last segment ends at the start.
 */
export function fitArcs(corners: readonly Point[], arcs: readonly OffsetArc[]): Path {
  const at = (index: number): Point => corners[index % corners.length] as Point;
  const runs = arcRuns(corners, arcs);
  const joints = runs.map((run, index) => {
    const before = runs.at(index - 1) ?? run;
    return runJoint(at(run.from), before, at(before.to - 1), run, at(run.from + 1));
  });
  const start = joints[0] ?? at(0);
  const segments = runs.flatMap((run, index): Segment[] => {
    const inner = Array.from({ length: run.to - run.from - 1 }, (_, step) => at(run.from + step + 1));
    const points = [joints[index] ?? start, ...inner, joints[index + 1] ?? start];
    return run.arc === null ? points.slice(1).map((to) => ({ kind: 'line', to })) : arcSegments(points, run.arc);
  });
  return { start, segments, closed: true };
}

function arcSegments(points: readonly Point[], { arc, geometry }: OffsetArc): Arc[] {
  const from = points[0] as Point;
  const to = points.at(-1) as Point;
  const length = points.reduce((sum, point, index) => sum + distance(points[index - 1] ?? point, point), 0);
  if (length <= MOST_TURN * geometry.radius) return [arcBetween(from, to, arc)];
  const ray = subtract(points[Math.floor(points.length / 2)] as Point, arc.centre);
  const middle = add(arc.centre, scale(ray, geometry.radius / Math.hypot(ray.x, ray.y)));
  return [arcBetween(from, middle, arc), arcBetween(middle, to, arc)];
}

/** The arc about the point nearest to its centre that is equally far from both ends, which rounding has moved a little. */
function arcBetween(from: Point, to: Point, { centre, clockwise }: Arc): Arc {
  const chord = subtract(to, from);
  const aside = dot(subtract(between(from, to, 0.5), centre), chord) / dot(chord, chord);
  return { kind: 'arc', to, centre: add(centre, scale(chord, aside)), clockwise };
}
