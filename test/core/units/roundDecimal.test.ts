import { describe, expect, it } from 'vitest';
import { roundDecimal } from '../../../src/core/units/roundDecimal';

// By hand.
describe('roundDecimal', () => {
  it.each([
    [1.005, 2, 1.01],
    [-1.005, 2, -1.01],
    [1.0049, 2, 1],
    [0.1 + 0.2, 1, 0.3],
    [0.5, 0, 1],
    [-0.5, 0, -1],
    [1e-8, 2, 0],
    [123456.789, 0, 123457],
  ])('rounds %d to %d decimals: %d', (value, decimals, rounded) => {
    expect(roundDecimal(value, decimals)).toBe(rounded);
  });

  it('never answers −0', () => {
    expect(Object.is(roundDecimal(-0.001, 2), 0)).toBe(true);
    expect(Object.is(roundDecimal(-0, 2), 0)).toBe(true);
  });

  it('throws for what it cannot round', () => {
    expect(() => roundDecimal(Number.NaN, 2)).toThrow(RangeError);
    expect(() => roundDecimal(1, 13)).toThrow(RangeError);
    expect(() => roundDecimal(1, -1)).toThrow(RangeError);
  });
});
