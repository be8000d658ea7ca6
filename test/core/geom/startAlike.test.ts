import { describe, expect, it } from 'vitest';
import { startAlike } from '../../../src/core/geom/startAlike';
import type { Path, Point } from '../../../src/core/geom/types';

const at = (x: number, y: number): Point => ({ x, y });
/** A loop of lines that comes back to its start. */
const loop = (...[start, ...others]: readonly [Point, ...Point[]]): Path => ({
  start,
  segments: [...others, start].map((to) => ({ kind: 'line', to })),
  closed: true,
});
const cornersOf = ({ start, segments }: Path): readonly Point[] => [start, ...segments.map(({ to }) => to)];

const BEFORE = loop(at(0, 0), at(10, 0), at(20, 0), at(20, 10), at(0, 10));

describe('startAlike', () => {
  it('begins after the corner that moved; by hand', () => {
    const moved = loop(at(0, 0), at(10, 3), at(20, 0), at(20, 10), at(0, 10));
    expect(cornersOf(startAlike(moved, BEFORE))).toEqual([
      at(20, 0),
      at(20, 10),
      at(0, 10),
      at(0, 0),
      at(10, 3),
      at(20, 0),
    ]);
  });

  it('begins the next one at the same corner, so that the two lie alike up to what moved', () => {
    const first = startAlike(loop(at(0, 0), at(10, 3), at(20, 0), at(20, 10), at(0, 10)), BEFORE);
    const second = startAlike(loop(at(20, 10), at(0, 10), at(0, 0), at(10, 4), at(20, 0)), first);
    expect(cornersOf(second).slice(0, 4)).toEqual(cornersOf(first).slice(0, 4));
    expect(cornersOf(second)[4]).toEqual(at(10, 4));
  });

  it('keeps every corner in its order', () => {
    const moved = loop(at(0, 0), at(10, 0), at(25, 5), at(20, 10), at(0, 10));
    const turned = cornersOf(startAlike(moved, BEFORE)).slice(1);
    const first = turned.findIndex(({ x, y }) => x === 0 && y === 0);
    expect([...turned.slice(first), ...turned.slice(0, first)]).toEqual(cornersOf(moved).slice(0, -1));
  });

  it('leaves as it is what has nothing in common, is the same, or is no loop', () => {
    const away = loop(at(50, 50), at(60, 50), at(60, 60));
    expect(startAlike(away, BEFORE)).toBe(away);
    expect(cornersOf(startAlike(BEFORE, BEFORE))).toHaveLength(6);
    const open: Path = { ...BEFORE, segments: BEFORE.segments.slice(0, 3) };
    expect(startAlike(open, BEFORE)).toBe(open);
  });

  it('takes arcs along; an arc about another centre is another segment', () => {
    const half = (y: number): Path => ({
      start: at(0, 0),
      segments: [
        { kind: 'line', to: at(10, 0) },
        { kind: 'arc', to: at(10, 10), centre: at(10, 5), clockwise: true },
        { kind: 'line', to: at(0, 10) },
        { kind: 'arc', to: at(0, 0), centre: at(y, 5), clockwise: true },
      ],
      closed: true,
    });
    // The last arc differs: what follows it comes first, and it comes last.
    expect(startAlike(half(-1), half(0))).toEqual({
      start: at(10, 0),
      segments: [
        { kind: 'arc', to: at(10, 10), centre: at(10, 5), clockwise: true },
        { kind: 'line', to: at(0, 10) },
        { kind: 'arc', to: at(0, 0), centre: at(-1, 5), clockwise: true },
        { kind: 'line', to: at(10, 0) },
      ],
      closed: true,
    });
  });
});
