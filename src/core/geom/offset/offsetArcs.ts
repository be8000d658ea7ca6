import { type ArcGeometry, arcGeometry } from '../arcGeometry';
import type { StartedSegment } from '../closedSegments';
import { add, cross, distance, dot, scale, subtract } from '../points';
import { COINCIDENT_MM } from '../tolerances';
import type { Arc, Point, Segment } from '../types';

/** A true arc that an offset outline follows, in whole or in part. */
export interface OffsetArc {
  readonly start: Point;
  readonly arc: Arc;
  readonly geometry: ArcGeometry;
}

/** Sine of the least angle between two segments that counts as a corner. */
const SMOOTH = 1e-6;

/**
 * The arcs that the offset of a clockwise outline may follow, before its parts are cut off against each other: those
 * beside its own arcs (same centre, radius more or less the distance), and round its corners (radius the distance).
 */
export function offsetArcs(started: readonly StartedSegment[], by: number): OffsetArc[] {
  const arcs: OffsetArc[] = [];
  for (const [index, { start, segment }] of started.entries()) {
    const before = started.at(index - 1);
    if (before !== undefined && by !== 0) {
      const corner = cornerArc(endDirection(before), startDirection({ start, segment }), start, by);
      if (corner !== null) arcs.push(corner);
    }
    if (segment.kind === 'arc') {
      const beside = besideArc(start, segment, by);
      if (beside !== null) arcs.push(beside);
    }
  }
  return arcs;
}

function cornerArc(from: Point, into: Point, centre: Point, by: number): OffsetArc | null {
  const turn = cross(from, into);
  const turnsBack = Math.abs(turn) < SMOOTH && dot(from, into) < 0;
  if (!turnsBack && turn * Math.sign(by) < SMOOTH) return null;
  return offsetArc(beside(centre, from, by), beside(centre, into, by), centre, by > 0);
}

function besideArc(start: Point, arc: Arc, by: number): OffsetArc | null {
  const radius = distance(start, arc.centre) + (arc.clockwise ? by : -by);
  if (radius <= COINCIDENT_MM) return null;
  const from = beside(start, arcDirection(start, arc), by);
  return offsetArc(from, beside(arc.to, arcDirection(arc.to, arc), by), arc.centre, arc.clockwise);
}

function offsetArc(start: Point, to: Point, centre: Point, clockwise: boolean): OffsetArc | null {
  if (distance(start, to) <= COINCIDENT_MM) return null;
  const arc: Arc = { kind: 'arc', to, centre, clockwise };
  return { start, arc, geometry: arcGeometry(start, arc) };
}

/** The point at a distance outside of a clockwise outline that runs through `point` in `direction`. */
const beside = (point: Point, direction: Point, by: number): Point =>
  add(point, scale({ x: direction.y, y: -direction.x }, by));

const unit = (vector: Point): Point => scale(vector, 1 / Math.hypot(vector.x, vector.y));

function arcDirection(at: Point, arc: Arc): Point {
  const out = unit(subtract(at, arc.centre));
  return arc.clockwise ? { x: -out.y, y: out.x } : { x: out.y, y: -out.x };
}

function startDirection({ start, segment }: StartedSegment): Point {
  if (segment.kind === 'arc') return arcDirection(start, segment);
  return unit(subtract(apartFrom(start, controls(segment)), start));
}

function endDirection({ start, segment }: StartedSegment): Point {
  if (segment.kind === 'arc') return arcDirection(segment.to, segment);
  return unit(subtract(segment.to, apartFrom(segment.to, [start, ...controls(segment)].reverse())));
}

const controls = (segment: Exclude<Segment, Arc>): Point[] =>
  segment.kind === 'cubic' ? [segment.c1, segment.c2, segment.to] : [segment.to];

/** The first of the points that lies away from `point`: a cubic whose handle has no length leaves toward the next one. */
const apartFrom = (point: Point, points: readonly Point[]): Point =>
  points.find((other) => distance(point, other) > COINCIDENT_MM) ?? { x: point.x + 1, y: point.y };
