import { describe, expect, it } from 'vitest';
import { chiSquareTail } from '../../../../src/core/placement/reading/chiSquareTail';

/** Upper critical values of chi-square: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4 (from memory). */
const CRITICAL = [
  { freedom: 1, at: 3.841, tail: 0.05 },
  { freedom: 1, at: 6.635, tail: 0.01 },
  { freedom: 2, at: 5.991, tail: 0.05 },
  { freedom: 2, at: 9.21, tail: 0.01 },
  { freedom: 3, at: 11.345, tail: 0.01 },
  { freedom: 5, at: 15.086, tail: 0.01 },
  { freedom: 10, at: 18.307, tail: 0.05 },
  { freedom: 100, at: 124.342, tail: 0.05 },
] as const;

describe('chiSquareTail', () => {
  it.each(CRITICAL)('is $tail at $at on $freedom degrees of freedom', ({ freedom, at, tail }) => {
    expect(chiSquareTail(at, freedom)).toBeCloseTo(tail, 4);
  });

  it('is e^(−x/2) on two degrees of freedom', () => {
    for (const x of [0.1, 1, 7, 20]) expect(chiSquareTail(x, 2)).toBeCloseTo(Math.exp(-x / 2), 12);
  });

  it('runs from one to nothing', () => {
    expect(chiSquareTail(0, 4)).toBe(1);
    expect(chiSquareTail(1e6, 4)).toBe(0);
    expect(chiSquareTail(300, 1)).toBeLessThan(1e-9);
  });

  it('refuses what is no sum of squares', () => {
    for (const [chiSquare, freedom] of [
      [-1, 2],
      [Number.NaN, 2],
      [3, 0],
      [3, 1.5],
    ] as const)
      expect(() => chiSquareTail(chiSquare, freedom)).toThrow(RangeError);
  });
});
