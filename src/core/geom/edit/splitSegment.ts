import { between } from '../points';
import { segmentPoint } from '../snap/segmentPoint';
import type { Point, Segment } from '../types';

/**
 * A segment cut in two at t (0 to 1; its share of a line or of an arc's turn, the parameter of a cubic): together they are
 * the segment itself. Cubics by de Casteljau's construction.
 */
export function splitSegment(start: Point, segment: Segment, t: number): readonly [Segment, Segment] {
  if (segment.kind !== 'cubic') return [{ ...segment, to: segmentPoint(start, segment, t) }, segment];
  const { c1, c2, to } = segment;
  const first = between(start, c1, t);
  const middle = between(c1, c2, t);
  const last = between(c2, to, t);
  const before = between(first, middle, t);
  const after = between(middle, last, t);
  return [
    { kind: 'cubic', c1: first, c2: before, to: between(before, after, t) },
    { kind: 'cubic', c1: after, c2: last, to },
  ];
}
