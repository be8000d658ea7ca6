import { describe, expect, it } from 'vitest';
import { radiusDimension } from '../../../../src/core/drawing/dimensions/radiusDimension';
import { pairsOf, textOf } from './readItems';

const words = { id: 'r', part: 'corner', layer: 'dimensions', text: 'Corner radius 5.0' } as const;
// The way at 3-4-5: (0.6, 0.8).
const angle = Math.atan2(4, 3);

// Coordinates by hand.
describe('radiusDimension', () => {
  it('leads to the arc from outside, and on to the level of its words', () => {
    const items = radiusDimension({ x: 10, y: 20 }, 5, angle, { ...words, reach: 10, level: 40, side: 'left' });
    const [tip, bend, elbow, end] = pairsOf(items, 'r-line');
    expect([tip, bend, elbow]).toEqual([
      [13, 24],
      [19, 32],
      [19, 40],
    ]);
    expect(end?.[1]).toBe(40);
    expect(end?.[0]).toBeLessThan(0);
    // The arrowhead stands on the arc; its middle, 2.2 mm back, is on the leader.
    const [one, point, other] = pairsOf(items, 'r-arrow');
    expect(point).toEqual([13, 24]);
    expect(((one?.[0] ?? 0) + (other?.[0] ?? 0)) / 2).toBeCloseTo(13 + 0.6 * 2.2, 3);
    expect(((one?.[1] ?? 0) + (other?.[1] ?? 0)) / 2).toBeCloseTo(24 + 0.8 * 2.2, 3);
    const text = textOf(items, 'r-text');
    expect(text).toMatchObject({ anchor: 'end', angle: 0, text: 'Corner radius 5.0' });
    expect(text.at.x).toBeCloseTo(18.2, 9);
  });

  it("leads to the arc from the centre's side", () => {
    const items = radiusDimension({ x: 10, y: 20 }, 5, angle, { ...words, reach: -2.5, side: 'right' });
    expect(pairsOf(items, 'r-line').slice(0, 2)).toEqual([
      [13, 24],
      [11.5, 22],
    ]);
    const [one, , other] = pairsOf(items, 'r-arrow');
    expect(((one?.[0] ?? 0) + (other?.[0] ?? 0)) / 2).toBeCloseTo(13 - 0.6 * 2.2, 3);
    expect(textOf(items, 'r-text').anchor).toBe('start');
  });

  it('points at a sharp corner for a radius of 0', () => {
    const items = radiusDimension({ x: 1, y: 2 }, 0, angle, { ...words, reach: 5, side: 'right' });
    expect(pairsOf(items, 'r-line').slice(0, 2)).toEqual([
      [1, 2],
      [4, 6],
    ]);
  });

  it('refuses a radius below 0 and what is not a number', () => {
    expect(() => radiusDimension({ x: 0, y: 0 }, -1, 0, { ...words, reach: 5, side: 'right' })).toThrow(RangeError);
    expect(() => radiusDimension({ x: 0, y: 0 }, 1, Number.NaN, { ...words, reach: 5, side: 'right' })).toThrow(
      RangeError,
    );
  });
});
