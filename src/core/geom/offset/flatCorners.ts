import { arcGeometry } from '../arcGeometry';
import type { StartedSegment } from '../closedSegments';
import { cubicPoint } from '../cubicPoint';
import { add, between, distance, scale, subtract } from '../points';
import type { Arc, Cubic, Point, Segment } from '../types';

/** How far a chord may stray from the curve that it stands for, mm: 0.4 µm, a fifth of what an offset may stray. */
export const FLAT_STRAY_MM = 4e-4;

/** Widest turn of one chord, radians: keeps the smallest arcs round. */
const WIDEST_TURN = Math.PI / 8;

/**
 * The corners of an outline whose curves are cut into chords that enclose the same area as the curves: the inner corners
 * stand outside of the curve by two thirds of what the middle of a chord would lack, the ends of every segment stay.
 * The last corner leads back to the first. stray: how far a chord may lie from the curve, mm.
 */
export function flatCorners(started: readonly StartedSegment[], stray = FLAT_STRAY_MM): Point[] {
  return started.flatMap(({ start, segment }) => [start, ...innerCorners(start, segment, stray)]);
}

function innerCorners(start: Point, segment: Segment, stray: number): Point[] {
  switch (segment.kind) {
    case 'line':
      return [];
    case 'arc':
      return arcCorners(start, segment, stray);
    case 'cubic':
      return cubicCorners(start, segment, stray);
  }
}

/**
 * A chord of turn θ strays by r·θ²/8 from a circle of radius r. A polygon with corners on r·√(θ/sin θ) encloses the
 * circle's area: ½·corner²·sin θ = ½·r²·θ for each chord.
 */
function arcCorners(start: Point, arc: Arc, stray: number): Point[] {
  const { radius, startAngle, sweep } = arcGeometry(start, arc);
  const widest = Math.min(WIDEST_TURN, Math.sqrt((8 * stray) / radius));
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / widest));
  const turn = sweep / count;
  const reach = radius * Math.sqrt(turn / Math.sin(turn));
  return inner(count, (index) => {
    const angle = startAngle + turn * index;
    return { x: arc.centre.x + reach * Math.cos(angle), y: arc.centre.y + reach * Math.sin(angle) };
  });
}

/**
 * A chord over a step τ of t strays by |B″|·τ²/8 from a cubic B(t), whose B″ is largest at an end. Corners on
 * B − B″·τ²/12 enclose the same area to the third order: the arc's rule, whose root is 1 + θ²/12 there, for any curve.
 */
function cubicCorners(start: Point, cubic: Cubic, stray: number): Point[] {
  const { c1, c2, to } = cubic;
  const bendAtStart = scale(subtract(add(start, c2), scale(c1, 2)), 6);
  const bendAtEnd = scale(subtract(add(c1, to), scale(c2, 2)), 6);
  const most = Math.max(distance(bendAtStart, { x: 0, y: 0 }), distance(bendAtEnd, { x: 0, y: 0 }));
  const count = Math.max(1, Math.ceil(Math.sqrt(most / (8 * stray))));
  const outward = -1 / (12 * count * count);
  return inner(count, (index) => {
    const t = index / count;
    return add(cubicPoint(start, cubic, t), scale(between(bendAtStart, bendAtEnd, t), outward));
  });
}

const inner = (count: number, corner: (index: number) => Point): Point[] =>
  Array.from({ length: count - 1 }, (_, index) => corner(index + 1));
