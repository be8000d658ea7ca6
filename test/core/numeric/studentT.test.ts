import { describe, expect, it } from 'vitest';
import { incompleteBeta } from '../../../src/core/numeric/incompleteBeta';
import { logGamma } from '../../../src/core/numeric/logGamma';
import { studentT } from '../../../src/core/numeric/studentT';
import { INCOMPLETE_BETA, LOG_GAMMA, NORMAL_975, STUDENT_T } from '../../reference/statistics';

describe('studentT', () => {
  it.each(STUDENT_T)('gives the factor for %d and %d degrees of freedom', (probability, degrees, factor) => {
    expect(Math.abs(studentT(probability, degrees) / factor - 1)).toBeLessThan(1e-9);
  });

  it('gives that of the normal distribution without limit', () => {
    expect(Math.abs(studentT(0.95, Number.POSITIVE_INFINITY) - NORMAL_975)).toBeLessThan(3e-6);
  });

  it.each([
    [0, 5],
    [1, 5],
    [Number.NaN, 5],
    [0.95, 0],
    [0.95, Number.NaN],
  ])('throws for %d and %d', (probability, degrees) => {
    expect(() => studentT(probability, degrees)).toThrow(RangeError);
  });
});

describe('incompleteBeta', () => {
  it.each(INCOMPLETE_BETA)('I_%d(%d, %d) is %d', (x, a, b, value) => {
    expect(Math.abs(incompleteBeta(x, a, b) / value - 1)).toBeLessThan(1e-12);
  });

  it('runs from 0 to 1 and throws outside', () => {
    expect(incompleteBeta(0, 2, 3)).toBe(0);
    expect(incompleteBeta(1, 2, 3)).toBe(1);
    expect(() => incompleteBeta(1.1, 2, 3)).toThrow(RangeError);
    expect(() => incompleteBeta(0.5, 0, 3)).toThrow(RangeError);
  });
});

describe('logGamma', () => {
  it.each(LOG_GAMMA)('ln Γ(%d) is %d', (x, value) => {
    expect(Math.abs(logGamma(x) / value - 1)).toBeLessThan(1e-13);
  });

  it('throws at and below 0', () => {
    expect(() => logGamma(0)).toThrow(RangeError);
    expect(() => logGamma(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
