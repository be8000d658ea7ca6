import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../src/core/geom/circlePath';
import { lineCrossings } from '../../../src/core/geom/lineCrossings';
import type { Path } from '../../../src/core/geom/types';

const ALONG = { x: 1, y: 0 };
const SLANT = { x: 0.6, y: 0.8 };

describe('lineCrossings', () => {
  it('finds both sides of a circle', () => {
    // Radius 5 about (1, 2); the line y = 5 lies 3 off its middle: 1 ± 4.
    const found = lineCrossings(circlePath({ x: 1, y: 2 }, 5), { x: 0, y: 5 }, ALONG);
    expect(found).toHaveLength(2);
    expect(found[0]).toBeCloseTo(-3, 9);
    expect(found[1]).toBeCloseTo(5, 9);
  });

  it('misses a circle that it does not reach', () => {
    expect(lineCrossings(circlePath({ x: 1, y: 2 }, 5), { x: 0, y: 7.5 }, ALONG)).toEqual([]);
  });

  it('finds the walls of a rectangle, however it is turned against them', () => {
    const path: Path = {
      start: { x: -6, y: -4 },
      segments: [
        { kind: 'line', to: { x: 6, y: -4 } },
        { kind: 'line', to: { x: 6, y: 4 } },
        { kind: 'line', to: { x: -6, y: 4 } },
      ],
      closed: true,
    };
    expect(lineCrossings(path, { x: 2, y: 1 }, ALONG)).toEqual([-8, 4]);
    // By 3-4-5 the line through the origin meets y = ±4 five along: x = ±3.
    const found = lineCrossings(path, { x: 0, y: 0 }, SLANT);
    expect(found.map((each) => Number(each.toFixed(9)))).toEqual([-5, 5]);
  });

  it('counts a corner that it passes', () => {
    const found = lineCrossings(
      {
        start: { x: 0, y: 0 },
        segments: [
          { kind: 'line', to: { x: 3, y: 4 } },
          { kind: 'line', to: { x: 10, y: 0 } },
        ],
        closed: true,
      },
      { x: 0, y: 4 },
      ALONG,
    );
    expect(found[0]).toBeCloseTo(3, 9);
  });

  it('finds where a cubic crosses', () => {
    // Controls on one level but for y: B(½).y = 3 · ¼ · … by symmetry the curve y(t) = 12·t(1 − t)… is 3 at t = ½ only when
    // its controls stand 4 up: 3·t(1 − t)·4 = 3; and x(½) = 5.
    const path: Path = {
      start: { x: 0, y: 0 },
      segments: [{ kind: 'cubic', c1: { x: 0, y: 4 }, c2: { x: 10, y: 4 }, to: { x: 10, y: 0 } }],
      closed: true,
    };
    // y = 2.25: t(1 − t) = 0.1875, t = ¼ and ¾; x = 10·(3·t² − 2·t³) = 1.5625 and 8.4375.
    const found = lineCrossings(path, { x: 0, y: 2.25 }, ALONG);
    expect(found.map((each) => Number(each.toFixed(9)))).toEqual([1.5625, 8.4375]);
  });

  it('throws on a path that is not one', () => {
    const bad: Path = { start: { x: Number.NaN, y: 0 }, segments: [], closed: true };
    expect(() => lineCrossings(bad, { x: 0, y: 0 }, ALONG)).toThrow(RangeError);
  });
});
