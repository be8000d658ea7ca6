import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restingLine } from '../../../../src/core/height/sole/restingLine';

const xs = [-4, -2, -1, 0, 1, 3, 5];
const points = (heights: readonly number[]) => xs.map((x, index) => ({ x, y: heights[index] ?? 0 }));

describe('restingLine', () => {
  it('lies on two points to both sides (by hand)', () => {
    // From (−2, 2) to (3, 1): falls 0.2 a mm, 1.6 at 0.
    const line = restingLine(points([0, 2, 0, 0, 0, 1, 0]));
    expect(line.slope).toBeCloseTo(-0.2, 12);
    expect(line.height).toBeCloseTo(1.6, 12);
    expect([line.from, line.to]).toEqual([-2, 3]);
  });

  it('rocks on a single point, held even between the ends as far as the points let it', () => {
    // Ends at −1 and 2 over 9: 1/3 a mm; free to lie there.
    expect(restingLine(points([-1, 0, 2, 5, 4, 3, 2]))).toMatchObject({ height: 5, slope: 1 / 3, from: 0, to: 0 });
    // Ends at −9 and 0 ask for 1 a mm; the point at −1, half a mm below the top, lets it rise by 0.5 only.
    expect(restingLine(points([-9, -9, 4.5, 5, 0, 0, 0]))).toMatchObject({ height: 5, slope: 0.5 });
    // Ends at −8 and −1 over 8: 7/8 a mm.
    expect(restingLine([-4, 0, 4].map((x, index) => ({ x, y: [-8, 0, -1][index] ?? 0 }))).slope).toBeCloseTo(7 / 8, 12);
  });

  it('is on or above every point and touches to both sides: no line lies lower at 0 (seeded)', () => {
    const heights = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(heights, (values) => {
        const { height, slope, from, to } = restingLine(points(values));
        for (const { x, y } of points(values)) expect(height + slope * x - y).toBeGreaterThanOrEqual(-1e-9);
        for (const place of [from, to])
          expect(height + slope * place).toBeCloseTo(values[xs.indexOf(place)] ?? Number.NaN, 9);
        expect(from).toBeLessThanOrEqual(0);
        expect(to).toBeGreaterThanOrEqual(0);
      }),
      { seed: 9, numRuns: 500 },
    );
  });

  it('refuses points on one side only', () => {
    expect(() =>
      restingLine([
        { x: 0, y: 0 },
        { x: 1, y: 0 },
      ]),
    ).toThrow(RangeError);
    expect(() => restingLine([])).toThrow(RangeError);
  });
});
