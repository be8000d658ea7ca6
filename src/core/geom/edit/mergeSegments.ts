import { arcGeometry } from '../arcGeometry';
import { add, between, distance, scale, subtract } from '../points';
import { segmentDirections } from '../snap/segmentDirections';
import { ARC_RADIUS_MM } from '../tolerances';
import type { Point, Segment } from '../types';

/** The share of the first segment is held within these, so that no handle flies off. */
const LEAST_SHARE = 1e-3;

/** The controls of a cubic that stands for a segment: of a line at its thirds, of an arc 4/3·tan(turn/4) of the radius long. */
export function handlesOf(start: Point, segment: Segment): { readonly c1: Point; readonly c2: Point } {
  switch (segment.kind) {
    case 'line':
      return { c1: between(start, segment.to, 1 / 3), c2: between(segment.to, start, 1 / 3) };
    case 'cubic':
      return segment;
    case 'arc': {
      const { leaving, arriving } = segmentDirections(start, segment);
      const reach = (4 / 3) * Math.tan(Math.abs(arcGeometry(start, segment).sweep) / 4);
      return { c1: add(start, scale(leaving, reach)), c2: subtract(segment.to, scale(arriving, reach)) };
    }
  }
}

/** Whether two segments are arcs of one circle, and together less than all of it. */
function oneCircle(start: Point, first: Segment, second: Segment): boolean {
  if (first.kind !== 'arc' || second.kind !== 'arc' || first.clockwise !== second.clockwise) return false;
  const turn = Math.abs(arcGeometry(start, first).sweep) + Math.abs(arcGeometry(first.to, second).sweep);
  return distance(first.centre, second.centre) <= ARC_RADIUS_MM && turn < 2 * Math.PI;
}

/**
 * One segment in place of two that meet: a line for two lines, the arc for two arcs of one circle, else a cubic that leaves
 * and arrives as they do. Two halves of one cubic give that cubic again, since each handle is drawn out by the share that
 * its half had.
 */
export function mergeSegments(start: Point, first: Segment, second: Segment): Segment {
  const { to } = second;
  if (first.kind === 'line' && second.kind === 'line') return { kind: 'line', to };
  if (first.kind === 'arc' && oneCircle(start, first, second)) return { ...first, to };
  const one = handlesOf(start, first);
  const other = handlesOf(first.to, second);
  const before = distance(one.c2, first.to);
  const both = before + distance(first.to, other.c1);
  const share = both === 0 ? 0.5 : Math.min(1 - LEAST_SHARE, Math.max(LEAST_SHARE, before / both));
  return {
    kind: 'cubic',
    c1: add(start, scale(subtract(one.c1, start), 1 / share)),
    c2: add(to, scale(subtract(other.c2, to), 1 / (1 - share))),
    to,
  };
}
