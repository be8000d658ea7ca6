import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestOnPath } from '../../../../src/core/geom/edit/nearestOnPath';
import type { Path } from '../../../../src/core/geom/types';
import { CUBIC_DISTANCES } from '../../../reference/geometry';
import { arched, at, box, flowing, swelled } from './outlines';

/** All expected places by hand unless said otherwise. */
describe('nearestOnPath', () => {
  it('finds the foot on a line, the implied one too', () => {
    expect(nearestOnPath(box, at(5, -3))).toEqual({ segment: 0, t: 0.625, at: at(5, 0), distance: 3 });
    expect(nearestOnPath(box, at(-24, 15))).toEqual({ segment: 3, t: 0.25, at: at(-20, 15), distance: 4 });
  });

  it('stops at a corner', () => {
    const found = nearestOnPath(box, at(23, -4));
    expect(found).toMatchObject({ at: at(20, 0), distance: 5 });
    expect([found.segment, found.t]).toEqual([0, 1]);
  });

  it('finds the place on an arc by the way from its centre', () => {
    // 90° of the arc about (30, 15) from (35, 15): at 3-4-5 the place is (33, 19).
    const found = nearestOnPath(swelled, at(36, 23));
    expect(found.segment).toBe(3);
    expect(found.at.x).toBeCloseTo(33, 12);
    expect(found.at.y).toBeCloseTo(19, 12);
    expect(found.distance).toBeCloseTo(5, 12);
    expect(found.t).toBeCloseTo(Math.atan2(4, 3) / (Math.PI / 2), 12);
  });

  it('does not take the far side of an arc’s circle', () => {
    expect(nearestOnPath(arched, at(3, 10))).toMatchObject({ segment: 1, at: at(6, 10), distance: 3 });
  });

  it.each(CUBIC_DISTANCES)('agrees with the figures of mpmath for %f, %f', (x, y, far) => {
    const path: Path = {
      start: at(0, 0),
      segments: [{ kind: 'cubic', c1: at(30, -25), c2: at(70, 40), to: at(100, 10) }],
      closed: false,
    };
    expect(nearestOnPath(path, at(x, y)).distance).toBeCloseTo(far, 10);
  });

  it('is no farther than any of many places tried', () => {
    const coordinate = fc.double({ min: -60, max: 60, noNaN: true });
    const dense = Array.from({ length: 401 }, (_, step) => {
      const t = step / 400;
      const mixed = (a: number, b: number, c: number, d: number): number =>
        (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t * t * c + t ** 3 * d;
      return [at(mixed(10, 14, 20, 20), mixed(0, 0, 6, 10)), at(mixed(20, 20, 17, 10), mixed(10, 13, 20, 20))];
    }).flat();
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const found = nearestOnPath(flowing, at(x, y));
        const least = Math.min(...dense.map((place) => Math.hypot(place.x - x, place.y - y)));
        expect(found.distance).toBeLessThanOrEqual(least + 1e-12);
        expect(Math.hypot(found.at.x - x, found.at.y - y)).toBeCloseTo(found.distance, 12);
      }),
    );
  });

  it('is the start of a path without segments', () => {
    expect(nearestOnPath({ start: at(3, 4), segments: [], closed: true }, at(0, 0))).toEqual({
      segment: 0,
      t: 0,
      at: at(3, 4),
      distance: 5,
    });
  });
});
