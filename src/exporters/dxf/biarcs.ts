import { cubicPoint } from '../../core/geom/cubicPoint';
import { distanceToPath } from '../../core/geom/distanceToPath';
import { splitSegment } from '../../core/geom/edit/splitSegment';
import { add, between, cross, distance, dot, scale, subtract } from '../../core/geom/points';
import { COINCIDENT_MM } from '../../core/geom/tolerances';
import type { Arc, Cubic, Line, Path, Point, Segment } from '../../core/geom/types';

/** How far arcs may stray from the curve at the places that are looked at, mm; what lies between has room to 0.005. */
const STRAY_MM = 0.004;
/** Places along a curve at which its arcs are held against it. */
const LOOKS = 16;
const MOST_HALVINGS = 14;
/** An arc that rises less than this over its chord is a line, mm. */
const FLAT_MM = 1e-5;

const line = (to: Point): Line => ({ kind: 'line', to });

/** The direction in which a cubic leaves its start, 1 long; null when it goes nowhere. */
const heading = (start: Point, ...onward: readonly Point[]): Point | null => {
  const first = onward.find((point) => distance(start, point) > COINCIDENT_MM);
  return first === undefined ? null : scale(subtract(first, start), 1 / distance(first, start));
};

/** The arc that leaves `from` in a direction and ends at `to`; a line where it would be flat. */
const arcFrom = (from: Point, along: Point, to: Point): Arc | Line | null => {
  const chord = subtract(to, from);
  const length = Math.hypot(chord.x, chord.y);
  if (length <= COINCIDENT_MM) return null;
  const aside = cross(along, chord);
  if (Math.abs(aside) < 2 * FLAT_MM) return dot(along, chord) > 0 ? line(to) : null;
  // The centre stands on the normal of the direction, as far from `to` as from `from`.
  const normal = { x: -along.y, y: along.x };
  const centre = add(from, scale(normal, (length * length) / (2 * aside)));
  return { kind: 'arc', to, centre, clockwise: aside > 0 };
};

/**
 * Two arcs that leave and meet a curve as it does itself, with one direction where they meet, both of their control lengths
 * alike (K. M. Bolton, "Biarc curves", Computer-Aided Design 7, 1975); null where there are none.
 */
const biarc = (start: Point, leaving: Point, arriving: Point, to: Point): readonly Segment[] | null => {
  const chord = subtract(to, start);
  const along = dot(chord, add(leaving, arriving));
  const apart = 2 * (1 - dot(leaving, arriving));
  const square = dot(chord, chord);
  const length = apart < 1e-12 ? square / (2 * along) : (Math.sqrt(along * along + apart * square) - along) / apart;
  if (!(length > 0 && Number.isFinite(length))) return null;
  const joint = between(add(start, scale(leaving, length)), subtract(to, scale(arriving, length)), 0.5);
  const first = arcFrom(start, leaving, joint);
  const back = arcFrom(to, scale(arriving, -1), joint);
  if (first === null || back === null) return null;
  const second: Segment = back.kind === 'line' ? line(to) : { ...back, to, clockwise: !back.clockwise };
  return [first, second];
};

const strays = (start: Point, cubic: Cubic, segments: readonly Segment[]): boolean => {
  const path: Path = { start, segments, closed: false };
  return Array.from({ length: LOOKS - 1 }, (_, look) => cubicPoint(start, cubic, (look + 1) / LOOKS)).some(
    (point) => distanceToPath(path, point) > STRAY_MM,
  );
};

/** Whether an arc turns more than half around: it lies beside the curve, or runs back. */
const turnsBack = (start: Point, segments: readonly Segment[]): boolean => {
  let from = start;
  return segments.some((segment) => {
    const rays = segment.kind === 'arc' ? [from, segment.to].map((point) => subtract(point, segment.centre)) : [];
    from = segment.to;
    const [first, last] = rays;
    if (segment.kind !== 'arc' || first === undefined || last === undefined) return false;
    return cross(first, last) > 0 !== segment.clockwise;
  });
};

/** Arcs and lines within 0.005 mm of a cubic, each leaving as the one before it ends. */
export const biarcs = (start: Point, cubic: Cubic, halvings = 0): readonly Segment[] => {
  const { c1, c2, to } = cubic;
  const leaving = heading(start, c1, c2, to);
  const arriving = heading(to, c2, c1, start);
  if (leaving === null || arriving === null) return [];
  const arcs = biarc(start, leaving, scale(arriving, -1), to);
  if (arcs !== null && !turnsBack(start, arcs) && !strays(start, cubic, arcs)) return arcs;
  if (halvings >= MOST_HALVINGS) return [line(to)];
  const [left, right] = splitSegment(start, cubic, 0.5);
  return [left, right].flatMap((half, index) =>
    half.kind === 'cubic' ? biarcs(index === 0 ? start : left.to, half, halvings + 1) : [half],
  );
};

/** The path with arcs and lines in place of its cubics, within 0.005 mm of them. */
export const withoutCubics = (path: Path): Path => {
  let start = path.start;
  const segments = path.segments.flatMap((segment) => {
    const from = start;
    start = segment.to;
    return segment.kind === 'cubic' ? biarcs(from, segment) : [segment];
  });
  return { ...path, segments };
};
