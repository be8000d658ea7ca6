import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joined } from '../../../src/canvas/repaint/boxes';
import type { Bounds } from '../../../src/core/geom/types';

const box = (minX: number, minY: number, width: number, height: number): Bounds => ({
  minX,
  minY,
  maxX: minX + width,
  maxY: minY + height,
});

describe('joined', () => {
  it('joins what lies together, and leaves apart what is cheaper alone', () => {
    expect(joined([box(0, 0, 10, 10), box(5, 5, 10, 10)])).toEqual([box(0, 0, 15, 15)]);
    // Around both lie 900,000 square pixels, in them 200.
    const apart = [box(0, 0, 10, 10), box(990, 890, 10, 10)];
    expect(joined(apart)).toEqual(apart);
    expect(joined([])).toEqual([]);
  });

  it('covers every box that it was given, however many', () => {
    const some = fc.record({ x: fc.nat(1500), y: fc.nat(900), width: fc.nat(400), height: fc.nat(400) });
    fc.assert(
      fc.property(fc.array(some, { maxLength: 60 }), (given) => {
        const boxes = given.map(({ x, y, width, height }) => box(x, y, width, height));
        const left = joined(boxes);
        expect(left.length).toBeLessThanOrEqual(boxes.length);
        for (const each of boxes)
          expect(
            left.some(
              (big) => big.minX <= each.minX && big.minY <= each.minY && big.maxX >= each.maxX && big.maxY >= each.maxY,
            ),
          ).toBe(true);
      }),
    );
  });
});
