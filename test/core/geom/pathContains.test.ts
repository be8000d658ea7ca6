import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../src/core/geom/circlePath';
import { mirrorPath } from '../../../src/core/geom/mirrorPath';
import { pathContains } from '../../../src/core/geom/pathContains';
import { cubicCircle, cubicLoop, polygon } from './paths';

// An L: 10 by 10 less its upper right quarter. Inside and outside by looking.
const corner = polygon([
  [0, 0],
  [10, 0],
  [10, 5],
  [5, 5],
  [5, 10],
  [0, 10],
]);

describe('pathContains', () => {
  it.each([
    [2, 2, true],
    [8, 2, true],
    [2, 8, true],
    // Level with corners of the outline.
    [2, 5, true],
    [-1, 5, false],
    [8, 8, false],
    [11, 5, false],
    [5, -1, false],
    [5, 11, false],
  ])('(%d, %d) in an L: %s', (x, y, inside) => {
    expect(pathContains(corner, { x, y })).toBe(inside);
    // The other way round, and from another corner on, it is the same piece.
    expect(pathContains(mirrorPath(corner), { x: -x, y })).toBe(inside);
  });

  it('is whether the radius is larger, for a circle of arcs and one of cubics', () => {
    const arcs = circlePath({ x: 3, y: -2 }, 5);
    // The usual handle length of a quarter circle, which strays by 0.027 % (from memory).
    const cubics = cubicCircle(0.5522847498);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        fc.oneof(fc.double({ min: 0, max: 0.998, noNaN: true }), fc.double({ min: 1.002, max: 3, noNaN: true })),
        (angle, share) => {
          const [x, y] = [share * Math.cos(angle), share * Math.sin(angle)];
          expect(pathContains(arcs, { x: 3 + 5 * x, y: -2 + 5 * y })).toBe(share < 1);
          expect(pathContains(cubics, { x, y })).toBe(share < 1);
        },
      ),
      { seed: 2, numRuns: 300 },
    );
  });

  // Upper edge at t = 1/2: y = (0 + 3·(−25) + 3·40 + 10) / 8 = 6.875 at x = (0 + 90 + 210 + 100) / 8 = 50.
  // Lower edge at t = 1/2: y = (60 + 270 + 60 + 60) / 8 = 56.25 at x = (100 + 180 + 60 + 0) / 8 = 42.5.
  it('follows the cubics of a loop', () => {
    expect(pathContains(cubicLoop, { x: 50, y: 7 })).toBe(true);
    expect(pathContains(cubicLoop, { x: 50, y: 6.75 })).toBe(false);
    expect(pathContains(cubicLoop, { x: 42.5, y: 56.1 })).toBe(true);
    expect(pathContains(cubicLoop, { x: 42.5, y: 56.4 })).toBe(false);
  });

  it('throws for what is no outline', () => {
    expect(() => pathContains({ start: { x: Number.NaN, y: 0 }, segments: [], closed: true }, { x: 0, y: 0 })).toThrow(
      RangeError,
    );
  });
});
