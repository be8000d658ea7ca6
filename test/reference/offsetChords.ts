import type { Path, Point, Segment } from '../../src/core/geom/types';

/**
 * The corners of an outline cut into chords whose ends lie on the curves, written apart from the program: each curve in
 * as many as keep it within `stray` (mm), times `finer`. The area of such a polygon errs by the square of the chord, so
 * that four thirds of the area at finer = 2 less a third of that at 1 errs by its fourth power.
 */
export function chordCorners(path: Path, stray: number, finer: number): [number, number][] {
  const corners: [number, number][] = [];
  let from = path.start;
  for (const segment of path.segments) {
    const count = chordCount(from, segment, stray) * finer;
    for (let step = 0; step < count; step++) corners.push(pointOn(from, segment, step / count));
    from = segment.to;
  }
  if (Math.hypot(from.x - path.start.x, from.y - path.start.y) > 1e-6) corners.push([from.x, from.y]);
  return corners;
}

/** Both refinements of an area in one: Richardson's rule. */
export const extrapolated = (coarse: number, fine: number): number => (4 * fine - coarse) / 3;

/** How many points of a path are looked at, about. */
const SAMPLES = 400;

/** Points of a path: about so many ends and middles of chords, and some on the way along every arc. */
export function sampledAlong(path: Path): [number, number][] {
  const every = Math.ceil((2 * path.segments.length) / SAMPLES);
  let from = path.start;
  return path.segments.flatMap((segment, index) => {
    const start = from;
    from = segment.to;
    if (segment.kind === 'line' && index % every !== 0) return [];
    const steps = segment.kind === 'line' ? 2 : 8;
    return Array.from({ length: steps }, (_, step) => pointOn(start, segment, step / steps));
  });
}

function chordCount(from: Point, segment: Segment, stray: number): number {
  if (segment.kind === 'line') return 1;
  if (segment.kind === 'arc') {
    const { radius, turn } = circle(from, segment);
    return Math.ceil(Math.abs(turn) / (2 * Math.acos(1 - stray / radius)));
  }
  const { c1, c2, to } = segment;
  const bend = Math.max(
    Math.hypot(from.x - 2 * c1.x + c2.x, from.y - 2 * c1.y + c2.y),
    Math.hypot(c1.x - 2 * c2.x + to.x, c1.y - 2 * c2.y + to.y),
  );
  return Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * stray))));
}

function pointOn(from: Point, segment: Segment, t: number): [number, number] {
  if (segment.kind === 'line') return [from.x + (segment.to.x - from.x) * t, from.y + (segment.to.y - from.y) * t];
  if (segment.kind === 'arc') {
    const { radius, angle, turn } = circle(from, segment);
    const at = angle + turn * t;
    return [segment.centre.x + radius * Math.cos(at), segment.centre.y + radius * Math.sin(at)];
  }
  const { c1, c2, to } = segment;
  const s = 1 - t;
  const mixed = (a: number, b: number, c: number, d: number): number =>
    s ** 3 * a + 3 * s * s * t * b + 3 * s * t * t * c + t ** 3 * d;
  return [mixed(from.x, c1.x, c2.x, to.x), mixed(from.y, c1.y, c2.y, to.y)];
}

function circle(from: Point, { centre, to, clockwise }: Segment & { kind: 'arc' }) {
  const angle = Math.atan2(from.y - centre.y, from.x - centre.x);
  const end = Math.atan2(to.y - centre.y, to.x - centre.x);
  const full = 2 * Math.PI;
  const turn = clockwise ? (end - angle + full) % full : -((angle - end + full) % full);
  return { radius: Math.hypot(from.x - centre.x, from.y - centre.y), angle, turn };
}
