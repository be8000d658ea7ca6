import { describe, expect, it } from 'vitest';
import { angleDimension } from '../../../../src/core/drawing/dimensions/angleDimension';
import { arcGeometry } from '../../../../src/core/geom/arcGeometry';
import type { Point } from '../../../../src/core/geom/types';
import { idsOf, pairsOf, textOf } from './readItems';

const words = { id: 'a', part: 'slot', layer: 'dimensions', text: '90.00°' } as const;
const corner = { x: 10, y: 10 };

const sweepOf = (from: Point, to: Point, radius: number): number => {
  const line = angleDimension(corner, from, to, { ...words, radius }).find(({ id }) => id === 'a-line');
  const arc = line?.kind === 'path' ? line.path.segments[0] : undefined;
  if (line?.kind !== 'path' || arc?.kind !== 'arc') throw new Error('The line of an angle is an arc.');
  const { radius: drawn, sweep } = arcGeometry(line.path.start, arc);
  expect(drawn).toBeCloseTo(radius, 9);
  return sweep;
};

// Coordinates by hand.
describe('angleDimension', () => {
  it('is an arc from side to side, with arrowheads square to them', () => {
    const items = angleDimension(corner, { x: 14, y: 10 }, { x: 10, y: 40 }, { ...words, radius: 20 });
    expect(pairsOf(items, 'a-line')).toEqual([
      [30, 10],
      [10, 30],
    ]);
    // The first side ends 4 mm from the corner and is drawn on; the second reaches past the arc.
    expect(pairsOf(items, 'a-witness-from')).toEqual([
      [14.8, 10],
      [30.7, 10],
    ]);
    expect(idsOf(items)).not.toContain('a-witness-to');
    // Along the arc from (30, 10) means downward; the arrowhead points up, out of the angle.
    expect(pairsOf(items, 'a-arrow-from')).toEqual([
      [30.589, 12.2],
      [30, 10],
      [29.411, 12.2],
    ]);
    expect(pairsOf(items, 'a-arrow-to')[1]).toEqual([10, 30]);
    const text = textOf(items, 'a-text');
    expect(text).toMatchObject({ text: '90.00°', angle: 0, anchor: 'start' });
    expect(text.at.x - corner.x).toBeCloseTo(text.at.y - corner.y, 9);
    expect(Math.hypot(text.at.x - corner.x, text.at.y - corner.y)).toBeGreaterThan(20);
  });

  it.each([
    ['quarter', { x: 40, y: 10 }, { x: 10, y: 40 }, 90],
    ['the same the other way', { x: 10, y: 40 }, { x: 40, y: 10 }, -90],
    ['half', { x: 40, y: 10 }, { x: -20, y: 10 }, 180],
    // 3-4-5 against the level: atan(4/3).
    ['3-4-5', { x: 40, y: 10 }, { x: 40, y: 50 }, 53.130102],
    ['across the left, where directions jump', { x: -20, y: 20 }, { x: -20, y: 0 }, 36.869898],
  ])('takes the smaller angle: %s', (_name, from, to, degrees) => {
    expect((sweepOf(from, to, 20) * 180) / Math.PI).toBeCloseTo(degrees, 5);
  });

  it('has its arrowheads outside of a small angle, on an arc that runs on', () => {
    // 3° at 20 mm: 1.05 mm of arc, and 4.4 mm more to either side.
    const to = { x: 10 + 30 * Math.cos(Math.PI / 60), y: 10 + 30 * Math.sin(Math.PI / 60) };
    expect(sweepOf({ x: 40, y: 10 }, to, 20)).toBeCloseTo(Math.PI / 60 + 8.8 / 20, 9);
    const items = angleDimension(corner, { x: 40, y: 10 }, to, { ...words, radius: 20 });
    expect(pairsOf(items, 'a-arrow-from')).toEqual([
      [29.411, 7.8],
      [30, 10],
      [30.589, 7.8],
    ]);
  });

  it('draws no angle and a tiny radius as well', () => {
    expect(sweepOf({ x: 40, y: 10 }, { x: 30, y: 10 }, 20)).toBeCloseTo(8.8 / 20, 9);
    expect(Math.abs(sweepOf({ x: 40, y: 10 }, { x: -20, y: 10 }, 0.5))).toBeLessThan(2 * Math.PI);
  });

  it('puts its words beside the middle of the arc, on whichever side that is', () => {
    const anchorAt = (x: number, y: number) =>
      textOf(
        angleDimension(
          corner,
          { x: 10 + x - y, y: 10 + y + x },
          { x: 10 + x + y, y: 10 + y - x },
          { ...words, radius: 9 },
        ),
        'a-text',
      ).anchor;
    expect([anchorAt(1, 0), anchorAt(-1, 0), anchorAt(0, 1), anchorAt(0, -1)]).toEqual([
      'start',
      'end',
      'middle',
      'middle',
    ]);
  });

  it('refuses a point in the corner, a radius of 0 and what is not a number', () => {
    const far = { x: 40, y: 10 };
    expect(() => angleDimension(corner, corner, far, { ...words, radius: 9 })).toThrow(RangeError);
    expect(() => angleDimension(corner, far, { x: 10, y: 40 }, { ...words, radius: 0 })).toThrow(RangeError);
    expect(() => angleDimension(corner, far, { x: 10, y: Number.NaN }, { ...words, radius: 9 })).toThrow(RangeError);
  });
});
