import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../src/core/geom/circlePath';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import { CUBIC_LOOP } from '../../reference/geometry';
import { cubicLoop, polygon } from './paths';

describe('pathBounds', () => {
  it('of a polygon and of a lone start', () => {
    expect(
      pathBounds(
        polygon([
          [3, 4],
          [5, 11],
          [12, 8],
        ]),
      ),
    ).toEqual({ minX: 3, minY: 4, maxX: 12, maxY: 11 });
    expect(pathBounds(polygon([[3, 4]]))).toEqual({ minX: 3, minY: 4, maxX: 3, maxY: 4 });
  });

  it('of a circle', () => {
    expect(pathBounds(circlePath({ x: 3, y: -2 }, 5))).toEqual({ minX: -2, minY: -7, maxX: 8, maxY: 3 });
  });

  // By hand on the unit circle: from 30° to 60° it bulges past no quarter; the other way round past all four.
  it.each([
    [true, { minX: 0.5, minY: 0.5, maxX: 0.866025403784, maxY: 0.866025403784 }],
    [false, { minX: -1, minY: -1, maxX: 1, maxY: 1 }],
  ])('of an arc, clockwise %s', (clockwise, bounds) => {
    const at = (degrees: number) => ({
      x: Math.cos((degrees * Math.PI) / 180),
      y: Math.sin((degrees * Math.PI) / 180),
    });
    const centre = { x: 0, y: 0 };
    const found = pathBounds({
      start: at(30),
      segments: [{ kind: 'arc', to: at(60), centre, clockwise }],
      closed: false,
    });
    for (const side of ['minX', 'minY', 'maxX', 'maxY'] as const) expect(found[side]).toBeCloseTo(bounds[side], 11);
  });

  it('of cubics, by their true extremes', () => {
    const found = pathBounds(cubicLoop);
    for (const side of ['minX', 'minY', 'maxX', 'maxY'] as const)
      expect(found[side]).toBeCloseTo(CUBIC_LOOP.bounds[side], 11);
  });

  it('throws for numbers that are not finite', () => {
    expect(() =>
      pathBounds(
        polygon([
          [0, 0],
          [Number.POSITIVE_INFINITY, 1],
        ]),
      ),
    ).toThrow(RangeError);
  });
});
