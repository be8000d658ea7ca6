import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squareLine } from '../../../src/core/placement/squareLine';

describe('squareLine', () => {
  // By hand: the last multiple of 10 mm, or of half an inch, that is at least 15 mm ahead of the bridge.
  it.each([
    ['mm', 625.8, 316, 610, 294],
    ['mm', 625, 316, 610, 294],
    ['mm', 624.9, 316, 600, 284],
    ['in', 625.8, 316, 24 * 25.4, 24 * 25.4 - 316],
    // 639.6 − 15 = 624.6, 24.59 in: 24 1/2 in.
    ['in', 639.6, 322.5, 24.5 * 25.4, 24.5 * 25.4 - 322.5],
    // 24 1/2 in and 15 mm exactly.
    ['in', 24.5 * 25.4 + 15, 322.5, 24.5 * 25.4, 24.5 * 25.4 - 322.5],
  ] as const)('in %s ahead of %s with the 12th at %s', (unit, front, twelfth, fromNut, fromTwelfth) => {
    const line = squareLine(front, twelfth, null, unit);
    expect(line.fromNut).toBeCloseTo(fromNut, 9);
    expect(line.fromTwelfth).toBeCloseTo(fromTwelfth, 9);
    expect(line.fromNutFace).toBeNull();
  });

  it('tells its distance from the nut face behind a zero fret', () => {
    expect(squareLine(621.9, 314, 4.5, 'mm')).toEqual({ fromNut: 600, fromTwelfth: 286, fromNutFace: 604.5 });
  });

  it('is always round and leaves between 15 mm and a step more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 150, max: 1200, noNaN: true }),
        fc.constantFrom('mm' as const, 'in' as const),
        (front, unit) => {
          const step = unit === 'mm' ? 10 : 12.7;
          const { fromNut } = squareLine(front, front / 2, null, unit);
          expect(Math.abs(fromNut / step - Math.round(fromNut / step))).toBeLessThan(1e-9);
          expect(front - fromNut).toBeGreaterThan(15 - 1e-6);
          expect(front - fromNut).toBeLessThan(15 + step + 1e-6);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });
});
