import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cubic, Path, Point, Segment } from '../../../src/core/geom/types';
import { validatePath } from '../../../src/core/geom/validatePath';
import { biarcs, withoutCubics } from '../../../src/exporters/dxf/biarcs';
import { OUTLINE } from '../../reference/fileDrawing';

/** What R12 may stray from a curve, mm. */
const PROMISED = 0.005;

const at = (x: number, y: number): Point => ({ x, y });

/** The polynomial itself, apart from the code under test. */
const onCubic = (p: Point, { c1, c2, to }: Cubic, t: number): Point => {
  const u = 1 - t;
  const mix = (a: number, b: number, c: number, d: number): number =>
    u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
  return at(mix(p.x, c1.x, c2.x, to.x), mix(p.y, c1.y, c2.y, to.y));
};

const toLine = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};

/** Distance to an arc by its angles: within them to the circle, else to the nearer end. */
const toSegment = (p: Point, from: Point, segment: Segment): number => {
  if (segment.kind === 'line') return toLine(p, from, segment.to);
  if (segment.kind === 'cubic') return Number.NaN;
  const { centre, to, clockwise } = segment;
  const angle = (q: Point): number => Math.atan2(q.y - centre.y, q.x - centre.x);
  const turn = (q: Point): number => {
    const d = (angle(q) - angle(from)) * (clockwise ? 1 : -1);
    return ((d % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  };
  const ends = Math.min(Math.hypot(p.x - from.x, p.y - from.y), Math.hypot(p.x - to.x, p.y - to.y));
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const rim = Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - radius);
  return turn(p) <= turn(to) ? Math.min(ends, rim) : ends;
};

const farthest = (start: Point, cubic: Cubic, segments: readonly Segment[]): number => {
  let most = 0;
  for (let step = 0; step <= 500; step++) {
    const p = onCubic(start, cubic, step / 500);
    let from = start;
    let least = Number.POSITIVE_INFINITY;
    for (const segment of segments) {
      least = Math.min(least, toSegment(p, from, segment));
      from = segment.to;
    }
    most = Math.max(most, least);
  }
  return most;
};

/** Length of the arcs and lines, and of the curve by fine chords. */
const lengths = (start: Point, cubic: Cubic, segments: readonly Segment[]): [number, number] => {
  let [from, sum] = [start, 0];
  for (const segment of segments) {
    const chord = Math.hypot(segment.to.x - from.x, segment.to.y - from.y);
    if (segment.kind === 'arc') {
      const radius = Math.hypot(from.x - segment.centre.x, from.y - segment.centre.y);
      sum += 2 * radius * Math.asin(Math.min(1, chord / (2 * radius)));
    } else sum += chord;
    from = segment.to;
  }
  let fine = 0;
  for (let step = 0; step < 4000; step++) {
    const [a, b] = [onCubic(start, cubic, step / 4000), onCubic(start, cubic, (step + 1) / 4000)];
    fine += Math.hypot(a.x - b.x, a.y - b.y);
  }
  return [sum, fine];
};

const expectNear = (start: Point, cubic: Cubic): void => {
  const segments = biarcs(start, cubic);
  expect(validatePath({ start, segments, closed: false }).ok).toBe(true);
  expect(segments.at(-1)?.to).toEqual(cubic.to);
  expect(farthest(start, cubic, segments)).toBeLessThan(PROMISED);
  const [sum, fine] = lengths(start, cubic, segments);
  expect(Math.abs(sum - fine)).toBeLessThan(0.01 + 1e-3 * fine);
};

const coordinate = fc.double({ min: -100, max: 100, noNaN: true, noDefaultInfinity: true });
const point = fc.record({ x: coordinate, y: coordinate });

describe('arcs in place of a curve', () => {
  it('stray less than promised from curves of every form', () => {
    const cubic = fc.record({ kind: fc.constant('cubic' as const), c1: point, c2: point, to: point });
    const apart = (start: Point, { c1, c2, to }: Cubic): boolean =>
      [c1, c2, to].some((end) => Math.hypot(end.x - start.x, end.y - start.y) > 0.01);
    fc.assert(
      fc.property(point, cubic, (start, curve) => {
        fc.pre(apart(start, curve));
        expectNear(start, curve);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it.each([
    ['a back that swells', at(30, 520), at(20, 520), at(12, 528), at(0, 528)],
    ['an S', at(0, 0), at(30, 0), at(0, 20), at(30, 20)],
    ['a loop', at(0, 0), at(100, 50), at(-50, 50), at(50, 0)],
    ['a cusp', at(0, 0), at(50, 50), at(0, 50), at(50, 0)],
    ['a handle of no length', at(0, 0), at(0, 0), at(20, 30), at(40, 0)],
    ['two handles of no length', at(0, 0), at(0, 0), at(40, 10), at(40, 10)],
    ['a straight line', at(0, 0), at(10, 5), at(20, 10), at(30, 15)],
  ])('holds for %s', (_, start, c1, c2, to) => {
    expectNear(start, { kind: 'cubic', c1, c2, to });
  });

  it('are one line for a curve that runs to and fro on one', () => {
    const segments = biarcs(at(0, 0), { kind: 'cubic', c1: at(60, 0), c2: at(-30, 0), to: at(30, 0) });
    expect(segments.every(({ kind, to }) => kind === 'line' && to.y === 0)).toBe(true);
    expect(biarcs(at(1, 1), { kind: 'cubic', c1: at(1, 1), c2: at(1, 1), to: at(1, 1) })).toEqual([]);
  });

  it('are few: a half of the back takes at most 16', () => {
    const cubic: Cubic = { kind: 'cubic', c1: at(20, 520), c2: at(12, 528), to: at(0, 528) };
    expect(biarcs(at(30, 520), cubic).length).toBeLessThanOrEqual(16);
  });

  it('leave lines and arcs as they are', () => {
    const path: Path = withoutCubics(OUTLINE);
    expect(path.segments.some(({ kind }) => kind === 'cubic')).toBe(false);
    expect(path.segments.slice(0, 4)).toEqual(OUTLINE.segments.slice(0, 4));
    expect(path.segments.slice(-3)).toEqual(OUTLINE.segments.slice(-3));
  });
});
