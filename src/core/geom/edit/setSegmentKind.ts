import { ok, type Result } from '../../result';
import { arcGeometry } from '../arcGeometry';
import { cross, distance, subtract } from '../points';
import { segmentPoint } from '../snap/segmentPoint';
import { COINCIDENT_MM } from '../tolerances';
import type { Path, Point, Segment } from '../types';
import { arcOfSagitta } from './arcBetween';
import { editBothSides } from './editBothSides';
import { type Loop, nodeOf, type PathEdit, segmentOf } from './loop';
import { handlesOf } from './mergeSegments';
import { type ArcSize, type Bulge, withArc } from './setRadius';
import { splitSegment } from './splitSegment';

export type SegmentKind = 'line' | 'arc' | 'curve';

/** How the arc is to be, where that is said. */
export interface ArcWish {
  readonly size?: ArcSize;
  readonly bulge?: Bulge;
}

/** Without a size, a line becomes an arc that stands this share of its chord off it. */
const USUAL_SAGITTA = 0.1;

/** A curve flatter than this has no arc of its own, mm. */
const FLAT_MM = 1e-3;

/** A cubic may stray this far from the arc that it stands for, mm: a micron. */
const STRAY_MM = 1e-3;

/** A cubic of a quarter turn strays by this share of the radius, and by the sixth power of the turn below that. */
const QUARTER_STRAY = 2.73e-4;

/**
 * Segment `index` made a line, a true arc or a curve; when symmetric, its partner too. A curve becomes the arc through its
 * ends and its middle; without a size a line, or a curve that is flat, the arc that stands a tenth of its chord off,
 * outward. An arc becomes as few cubics, of a quarter turn at most, as stay within a micron of it, with new nodes between
 * them. A line becomes the curve that lies on it.
 *
 * Codes: those of setRadius, outline.sagitta.
 */
export function setSegmentKind(
  path: Path,
  index: number,
  kind: SegmentKind,
  wish: ArcWish = {},
  symmetric = false,
): Result<PathEdit> {
  return editBothSides(path, symmetric, { kind: 'segment', index }, (loop, segment) => {
    if (kind === 'arc') return asArc(loop, segment, wish);
    return ok(
      kind === 'line'
        ? withSegments(loop, segment, [{ kind: 'line', to: nodeOf(loop, segment + 1) }])
        : asCurve(loop, segment),
    );
  });
}

/** The loop with segment `index` drawn as several, which bring new nodes where they meet. */
function withSegments(loop: Loop, index: number, pieces: readonly Segment[]): Loop {
  const put = <T>(list: readonly T[], at: number, out: number, items: readonly T[]): T[] => [
    ...list.slice(0, at),
    ...items,
    ...list.slice(at + out),
  ];
  const inner = pieces.slice(0, -1);
  return {
    nodes: put(
      loop.nodes,
      index + 1,
      0,
      inner.map(({ to }) => to),
    ),
    segments: put(loop.segments, index, 1, pieces),
    from: put(
      loop.from,
      index + 1,
      0,
      inner.map(() => -1),
    ),
  };
}

function asArc(loop: Loop, index: number, { size, bulge }: ArcWish): Result<Loop> {
  const segment = segmentOf(loop, index);
  const [start, end] = [nodeOf(loop, index), nodeOf(loop, index + 1)];
  if (size !== undefined) return withArc(loop, index, size, bulge);
  if (segment.kind === 'arc' && bulge === undefined) return ok(loop);
  if (segment.kind === 'arc') return withArc(loop, index, { radius: arcGeometry(start, segment).radius }, bulge);
  const through =
    segment.kind === 'cubic' && bulge === undefined ? arcThrough(start, segmentPoint(start, segment, 0.5), end) : null;
  if (through !== null) return ok(withSegments(loop, index, [through]));
  return withArc(loop, index, { sagitta: distance(start, end) * USUAL_SAGITTA }, bulge);
}

/** The arc from a over m to b; null where they lie on a line. Its tan(turn/4) = tan of half the angle that a and b leave at m. */
function arcThrough(a: Point, m: Point, b: Point): Segment | null {
  const chord = distance(a, b);
  if (chord <= COINCIDENT_MM) return null;
  const side = cross(subtract(b, a), subtract(m, a));
  if (Math.abs(side) / chord <= FLAT_MM) return null;
  const [p, q] = [subtract(m, a), subtract(b, m)];
  // By the inscribed angle the way turns at m by half of what the whole arc turns.
  const turn = 2 * Math.atan2(cross(p, q), p.x * q.x + p.y * q.y);
  return arcOfSagitta(a, b, (chord / 2) * Math.tan(Math.abs(turn) / 4), turn > 0);
}

function asCurve(loop: Loop, index: number): Loop {
  const segment = segmentOf(loop, index);
  const start = nodeOf(loop, index);
  if (segment.kind === 'cubic') return loop;
  if (segment.kind === 'line') return withSegments(loop, index, [curveFor(start, segment)]);
  const { radius, sweep } = arcGeometry(start, segment);
  const quarter = Math.PI / 2;
  const widest = quarter * Math.min(1, (STRAY_MM / (QUARTER_STRAY * radius)) ** (1 / 6));
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / widest - 1e-9));
  const pieces: Segment[] = [];
  let [from, rest]: [Point, Segment] = [start, segment];
  for (let left = count; left > 1; left -= 1) {
    const [first, second] = splitSegment(from, rest, 1 / left);
    pieces.push(curveFor(from, first));
    [from, rest] = [first.to, second];
  }
  return withSegments(loop, index, [...pieces, curveFor(from, rest)]);
}

const curveFor = (start: Point, segment: Segment): Segment => ({
  kind: 'cubic',
  ...handlesOf(start, segment),
  to: segment.to,
});
