import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../src/core/numeric/seededRandom';
import { xoshiro128 } from '../../../src/core/numeric/xoshiro128';
import { XOSHIRO_FROM_1234 } from '../../reference/statistics';

const COUNT = 100_000;
const draw = (next: () => number): number[] => Array.from({ length: COUNT }, next);
const mean = (numbers: readonly number[]): number => numbers.reduce((total, n) => total + n, 0) / numbers.length;

describe('xoshiro128', () => {
  it('gives the outputs of the reference program', () => {
    const next = xoshiro128([1, 2, 3, 4]);
    expect(XOSHIRO_FROM_1234.map(() => next())).toEqual([...XOSHIRO_FROM_1234]);
  });

  it('refuses the state that it would never leave', () => {
    expect(() => xoshiro128([0, 0, 0, 0])).toThrow(RangeError);
  });
});

describe('seededRandom', () => {
  it('repeats itself for the same seed and not for another', () => {
    const five = (seed: number) => {
      const random = seededRandom(seed);
      return [random.uniform(), random.normal(), random.normal(), random.normal(), random.uniform()];
    };
    expect(five(7)).toEqual(five(7));
    expect(five(7)).not.toEqual(five(8));
    expect(five(0)).not.toEqual(five(2 ** 32 - 1));
  });

  // Limits are five standard errors of 100 000 draws: 1/√(12n), and for a normal 1/√n, √(2/n), √(24/n).
  it('is even over 0 to 1', () => {
    const numbers = draw(seededRandom(1).uniform);
    expect(numbers.every((n) => n >= 0 && n < 1)).toBe(true);
    expect(Math.abs(mean(numbers) - 0.5)).toBeLessThan(0.0046);
    expect(Math.abs(mean(numbers.map((n) => n * n)) - 1 / 3)).toBeLessThan(0.0048);
    expect(Math.abs(mean(numbers.slice(1).map((n, i) => n * (numbers[i] ?? 0))) - 0.25)).toBeLessThan(0.0035);
  });

  it('draws normal deviates', () => {
    const numbers = draw(seededRandom(2).normal);
    expect(Math.abs(mean(numbers))).toBeLessThan(0.016);
    expect(Math.abs(mean(numbers.map((n) => n * n)) - 1)).toBeLessThan(0.0224);
    expect(Math.abs(mean(numbers.map((n) => n ** 4)) - 3)).toBeLessThan(0.16);
    expect(Math.abs(mean(numbers.slice(1).map((n, i) => n * (numbers[i] ?? 0))))).toBeLessThan(0.016);
    // 95 % within ±1.959964.
    const within = numbers.filter((n) => Math.abs(n) < 1.959964).length / COUNT;
    expect(Math.abs(within - 0.95)).toBeLessThan(0.0035);
  });

  it.each([0.5, -1, 2 ** 32, Number.NaN])('refuses %d as seed', (seed) => {
    expect(() => seededRandom(seed)).toThrow(RangeError);
  });
});
