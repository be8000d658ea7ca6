import { describe, expect, it } from 'vitest';
import { centsPerMm } from '../../../src/core/intonation/centsPerMm';
import { saddleTravelFor } from '../../../src/core/intonation/saddleTravelFor';

describe('centsPerMm', () => {
  it('is 2.684 at fret 12 of 645 mm (1731.234/645, by hand)', () => expect(centsPerMm(645, 12)).toBeCloseTo(2.684, 3));
  it('costs 3.3 cents to take slot front for slot centre on 650 (1.25 × 2.663, by hand)', () => {
    expect(centsPerMm(650, 12)).toBeCloseTo(2.663, 3);
    expect(1.25 * centsPerMm(650, 12)).toBeCloseTo(3.33, 2);
  });
  it('costs 12.4 cents to forget 4.5 mm on 628 (by hand)', () =>
    expect(4.5 * centsPerMm(628, 12)).toBeCloseTo(12.4, 1));
  // u = 2^(7/12) − 1 = 0.498307; 1731.234 × 0.498307/645 = 1.3375.
  it('is less at fret 7 (by hand)', () => expect(centsPerMm(645, 7)).toBeCloseTo(1.3375, 4));
  it.each([
    [0, 12],
    [645, 0],
    [Number.NaN, 12],
    [645, Number.POSITIVE_INFINITY],
  ])('refuses %s, %s', (scale, fret) => expect(() => centsPerMm(scale, fret)).toThrow(RangeError));
});

describe('saddleTravelFor', () => {
  it('moves the saddle back for a sharp note, forward for a flat one (5/2.684 by hand)', () => {
    expect(saddleTravelFor(5, 645, 12)).toBeCloseTo(1.8628, 4);
    expect(saddleTravelFor(-5, 645, 12)).toBeCloseTo(-1.8628, 4);
  });
  // Exact travel for 20 cents on 645: τ = (k − 1)/(1 − 2k), k = 2^(−20/1200): 7.583 mm; the first order gives 7.451.
  it('falls short by about 2 % at 20 cents', () => expect(saddleTravelFor(20, 645, 12) / 7.583).toBeCloseTo(0.983, 3));
  it('refuses an error that is not a number', () =>
    expect(() => saddleTravelFor(Number.NaN, 645, 12)).toThrow(RangeError));
});
