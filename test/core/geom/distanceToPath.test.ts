import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../src/core/geom/circlePath';
import { distanceToPath } from '../../../src/core/geom/distanceToPath';
import type { Path } from '../../../src/core/geom/types';
import { CUBIC_DISTANCES } from '../../reference/geometry';
import { cubicCircle, cubicLoop, polygon } from './paths';

const square = polygon([
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
]);

describe('distanceToPath', () => {
  // By hand.
  it.each([
    [5, 2, 2],
    [5, -3, 3],
    [13, 14, 5],
    [1, 5, 1], // to the implied side
    [10, 10, 0],
  ])('from %d, %d to a square: %d', (x, y, far) => {
    expect(distanceToPath(square, { x, y })).toBeCloseTo(far, 12);
  });

  it('leaves out the closing side of an open path', () => {
    expect(distanceToPath({ ...square, closed: false }, { x: 1, y: 4 })).toBeCloseTo(4, 12);
  });

  it('to arcs: along the radius where they face the point, else to an end', () => {
    const circle = circlePath({ x: 3, y: 4 }, 5);
    expect(distanceToPath(circle, { x: 3, y: 4 })).toBeCloseTo(5, 12);
    expect(distanceToPath(circle, { x: 12, y: 16 })).toBeCloseTo(10, 12); // 15 from the centre
    const centre = { x: 0, y: 0 };
    const quarter: Path = {
      start: { x: 1, y: 0 },
      segments: [{ kind: 'arc', to: { x: 0, y: 1 }, centre, clockwise: true }],
      closed: false,
    };
    expect(distanceToPath(quarter, { x: 3, y: 4 })).toBeCloseTo(4, 12);
    expect(distanceToPath(quarter, { x: -3, y: 1 })).toBeCloseTo(3, 12);
    expect(distanceToPath(quarter, { x: -0.1, y: -2 })).toBeCloseTo(Math.hypot(1.1, 2), 12);
  });

  it.each(CUBIC_DISTANCES)('from %d, %d to a cubic', (x, y, far) => {
    const cubic: Path = { ...cubicLoop, segments: cubicLoop.segments.slice(0, 1), closed: false };
    expect(distanceToPath(cubic, { x, y })).toBeCloseTo(far, 11);
  });

  it('manages cubics that fold, come to a point or stand still', () => {
    const to = { x: 4, y: 0 };
    const cubic = (c1: { x: number; y: number }, c2: { x: number; y: number }, end = to): Path => ({
      start: { x: 0, y: 0 },
      segments: [{ kind: 'cubic', c1, c2, to: end }],
      closed: false,
    });
    expect(distanceToPath(cubic({ x: 0, y: 0 }, to), { x: 1, y: 2 })).toBeCloseTo(2, 9); // a straight line
    expect(distanceToPath(cubic({ x: 4 / 3, y: 0 }, { x: 8 / 3, y: 0 }), { x: 2.5, y: -1 })).toBeCloseTo(1, 12);
    expect(distanceToPath(cubic({ x: 0, y: 0 }, { x: 0, y: 0 }, { x: 0, y: 0 }), { x: 3, y: 4 })).toBeCloseTo(5, 12);
    // A cusp at t = 1/2: controls (0, 0) (1, 1) (0, 1) (1, 0) give x = 3t − 6t² + 4t³ and y = 3t(1 − t), there (1/2, 3/4).
    expect(distanceToPath(cubic({ x: 1, y: 1 }, { x: 0, y: 1 }, { x: 1, y: 0 }), { x: 0.5, y: 2 })).toBeCloseTo(
      1.25,
      9,
    );
    // The centre of a circle by cubics is as far as the nearest of it: at the joins and at the middle of each, radius 1.
    expect(distanceToPath(cubicCircle(0.5522847498307935), { x: 0, y: 0 })).toBeCloseTo(1, 12);
  });

  it('is never more than the distance to any point tried on the cubic, and nearly reached by one', () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    const point = fc.record({ x: number, y: number });
    const bernstein = (t: number): number[] => [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
    fc.assert(
      fc.property(point, point, point, point, point, (start, c1, c2, to, from) => {
        const path: Path = { start, segments: [{ kind: 'cubic', c1, c2, to }], closed: false };
        const far = distanceToPath(path, from);
        let least = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 400; i++) {
          const [b0 = 0, b1 = 0, b2 = 0, b3 = 0] = bernstein(i / 400);
          const x = b0 * start.x + b1 * c1.x + b2 * c2.x + b3 * to.x;
          const y = b0 * start.y + b1 * c1.y + b2 * c2.y + b3 * to.y;
          least = Math.min(least, Math.hypot(x - from.x, y - from.y));
        }
        expect(far).toBeLessThanOrEqual(least + 1e-9);
        // Neighbours tried are at most 3·142/400 apart, so one lies within half of that of the nearest point.
        expect(far).toBeGreaterThanOrEqual(least - 0.54);
      }),
      { seed: 2505, numRuns: 200 },
    );
  });

  it('throws for numbers that are not finite', () => {
    expect(() => distanceToPath(square, { x: Number.NaN, y: 0 })).toThrow(RangeError);
  });
});
