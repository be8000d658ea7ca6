import { distance } from '../../core/geom/points';
import type { Path, Point, Segment } from '../../core/geom/types';

/** A control point with its weight, times which x and y are told: (w·x, w·y, w). */
type Control = readonly [x: number, y: number, w: number];

export interface Spline {
  readonly degree: number;
  readonly knots: readonly number[];
  readonly points: readonly Point[];
  /** One for each point, or none when all are 1. */
  readonly weights: readonly number[];
}

/**
 * How far a cubic may stray from a curve that is none, as a share of the size of the spline: 1 µm on 200 mm. Splines of
 * degree 1 to 3 without weights are taken exactly.
 */
const SPLINE_STRAY = 5e-6;

const MOST_HALVINGS = 6;
const MOST_DEGREE = 11;
const MOST_POINTS = 1000;

const mix = (a: Control, b: Control, t: number): Control => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

const toPoint = ([x, y, w]: Control): Point => ({ x: x / w, y: y / w });

/** A knot put in once more: the curve stays (Boehm, 1980). */
const insertKnot = (knots: number[], controls: Control[], degree: number, knot: number): void => {
  let span = degree;
  while (span < controls.length - 1 && (knots[span + 1] ?? 0) <= knot) span++;
  const added: Control[] = [];
  for (let i = span - degree + 1; i <= span; i++) {
    const [low = 0, high = 0] = [knots[i], knots[i + degree]];
    const [before, here] = [controls[i - 1], controls[i]];
    if (before && here) added.push(mix(before, here, high > low ? (knot - low) / (high - low) : 0));
  }
  controls.splice(span - degree + 1, degree - 1, ...added);
  knots.splice(span + 1, 0, knot);
};

/** The Bézier pieces of a spline: every knot of its domain put in until it stands `degree` times. */
const bezierPieces = ({ degree, knots, points, weights }: Spline): Control[][] => {
  const grown = [...knots];
  const controls = points.map(({ x, y }, index): Control => {
    const w = weights[index] ?? 1;
    return [x * w, y * w, w];
  });
  const [low = 0, high = 0] = [knots[degree], knots[knots.length - degree - 1]];
  const stops = [...new Set(knots.filter((knot) => knot >= low && knot <= high))];
  for (const stop of stops) {
    const there = grown.filter((knot) => knot === stop).length;
    for (let count = there; count < degree; count++) insertKnot(grown, controls, degree, stop);
  }
  const pieces: Control[][] = [];
  for (let at = 0; at + 1 < stops.length; at++) {
    const last = grown.lastIndexOf(stops[at] ?? 0);
    pieces.push(controls.slice(last - degree, last + 1));
  }
  return pieces;
};

/** Both halves of a Bézier piece, by de Casteljau's construction. */
const halves = (piece: readonly Control[]): [Control[], Control[]] => {
  const right = [...piece];
  const left: Control[] = right.slice(0, 1);
  for (let length = right.length - 1; length > 0; length--) {
    for (let i = 0; i < length; i++) {
      const [a, b] = [right[i], right[i + 1]];
      if (a && b) right[i] = mix(a, b, 0.5);
    }
    const [first] = right;
    if (first) left.push(first);
  }
  return [left, right];
};

/** The cubic that leaves and meets a piece as the piece itself does: place and derivative at both ends. */
const cubicOf = (piece: readonly Control[], degree: number): Segment & { kind: 'cubic' } => {
  const handle = (end: Control, next: Control): Point => {
    // For the curve (X, Y)/W the derivative at an end is degree·(w₁/w₀)·(P₁ − P₀).
    const [from, to] = [toPoint(end), toPoint(next)];
    const share = (degree * next[2]) / (3 * end[2]);
    return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
  };
  const [first = [0, 0, 1], second = first] = piece;
  const last = piece.at(-1) ?? first;
  return { kind: 'cubic', c1: handle(first, second), c2: handle(last, piece.at(-2) ?? last), to: toPoint(last) };
};

const onCubic = (start: Point, { c1, c2, to }: { c1: Point; c2: Point; to: Point }, t: number): Point => {
  const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
  return { x: a * start.x + b * c1.x + c * c2.x + d * to.x, y: a * start.y + b * c1.y + c * c2.y + d * to.y };
};

const endOf = (piece: readonly Control[]): Point => toPoint(piece.at(-1) ?? [0, 0, 1]);

/** Cubics for a piece, halved until they stray less than `most` at the quarters, where the widest strays lie. */
const approximate = (piece: readonly Control[], degree: number, most: number, depth = 0): Segment[] => {
  const [left, right] = halves(piece);
  const cubic = cubicOf(piece, degree);
  const start = toPoint(piece[0] ?? [0, 0, 1]);
  const quarters: [number, Point][] = [
    [0.25, endOf(halves(left)[0])],
    [0.5, endOf(left)],
    [0.75, endOf(halves(right)[0])],
  ];
  const stray = Math.max(...quarters.map(([t, on]) => distance(on, onCubic(start, cubic, t))));
  if (depth >= MOST_HALVINGS || !(stray > most)) return [cubic];
  return [...approximate(left, degree, most, depth + 1), ...approximate(right, degree, most, depth + 1)];
};

/** The wider side of the box around points. */
const sizeOf = (points: readonly Point[]): number => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
  }
  return Math.max(maxX - minX, maxY - minY);
};

const segmentsOf = (piece: readonly Control[], degree: number, weighted: boolean, most: number): Segment[] => {
  const [a, b, c] = piece.map(toPoint);
  if (!weighted && degree === 1 && b) return [{ kind: 'line', to: b }];
  if (!weighted && degree === 2 && a && b && c) return [cubicOf(piece, 2)];
  if (!weighted && degree === 3) return [cubicOf(piece, 3)];
  return approximate(piece, degree, most);
};

const grows = (knots: readonly number[]): boolean =>
  knots.every((knot, at) => at === 0 || knot >= (knots[at - 1] ?? 0));

const isSound = ({ degree, knots, points, weights }: Spline): boolean =>
  Number.isInteger(degree) &&
  degree >= 1 &&
  degree <= MOST_DEGREE &&
  points.length > degree &&
  knots.length === points.length + degree + 1 &&
  knots.every(Number.isFinite) &&
  grows(knots) &&
  (weights.length === 0 || (weights.length === points.length && weights.every((weight) => weight > 0)));

/** A spline as an open path of cubics and lines, or why there is none. */
export const splinePath = (spline: Spline): Path | string => {
  const { degree, points, weights } = spline;
  if (points.length === 0) return 'spline told by points on it alone';
  if (points.length > MOST_POINTS) return 'spline with too many points';
  if (!isSound(spline)) return 'spline with damaged numbers';
  const pieces = bezierPieces(spline);
  const [first] = pieces[0] ?? [];
  if (first === undefined) return 'spline with damaged numbers';
  const weighted = weights.some((weight) => weight !== weights[0]);
  const most = sizeOf(points) * SPLINE_STRAY;
  const segments = pieces.flatMap((piece) => segmentsOf(piece, degree, weighted, most));
  return { start: toPoint(first), segments, closed: false };
};
