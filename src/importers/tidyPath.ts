import { arcGeometry } from '../core/geom/arcGeometry';
import { add, distance, subtract } from '../core/geom/points';
import { COINCIDENT_MM } from '../core/geom/tolerances';
import type { Path, Point, Segment } from '../core/geom/types';
import { arcBetween } from './arcBetween';

/** Ends nearer than this belong together, mm: a fifth of what a scribed line is wide; common practice, no source. */
export const JOIN_MM = 0.01;

/** A segment from `from` to `to` instead of from `was` to its own end: an arc keeps its turn, a cubic its handles. */
export const refit = (segment: Segment, was: Point, from: Point, to: Point = segment.to): Segment => {
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', to };
    case 'arc':
      return arcBetween(from, to, arcGeometry(was, segment).sweep);
    case 'cubic': {
      const c1 = add(segment.c1, subtract(from, was));
      const c2 = add(segment.c2, subtract(to, segment.to));
      return { kind: 'cubic', c1, c2, to };
    }
  }
};

/** Whether a segment goes nowhere: its points all stand where it starts. */
const isPoint = (segment: Segment, from: Point): boolean =>
  distance(from, segment.to) <= COINCIDENT_MM &&
  (segment.kind !== 'cubic' ||
    (distance(from, segment.c1) <= COINCIDENT_MM && distance(from, segment.c2) <= COINCIDENT_MM));

/**
 * The same path without segments that go nowhere, with arcs that are exact, flat arcs as lines, and closed where its ends
 * meet within JOIN_MM. A closed path comes back to its start by itself.
 */
export const tidyPath = ({ start, segments, closed }: Path): Path => {
  const tidy: Segment[] = [];
  let [was, from] = [start, start];
  for (const segment of segments) {
    const fitted = refit(segment, was, from);
    was = segment.to;
    if (isPoint(fitted, from)) continue;
    tidy.push(fitted);
    from = fitted.to;
  }
  const last = tidy.at(-1);
  if (last === undefined) return { start, segments: [], closed: false };
  const gap = distance(from, start);
  const alone = tidy.length === 1 && last.kind === 'line';
  if (alone || (!closed && gap > JOIN_MM)) return { start, segments: tidy, closed: false };
  if (gap > JOIN_MM) return { start, segments: [...tidy, { kind: 'line', to: start }], closed: true };
  const before = tidy.at(-2)?.to ?? start;
  const snapped = refit(last, before, before, start);
  const kept = isPoint(snapped, before) ? [] : [snapped];
  return { start, segments: [...tidy.slice(0, -1), ...kept], closed: true };
};
