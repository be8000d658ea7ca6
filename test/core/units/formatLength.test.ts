import { describe, expect, it } from 'vitest';
import { formatLength } from '../../../src/core/units/formatLength';
import { FRACTIONS_WRITTEN, MILLIMETRES_WRITTEN } from '../../reference/units';

describe('formatLength', () => {
  it.each(MILLIMETRES_WRITTEN)('writes %d mm with %d decimals as %s', (mm, decimals, text) => {
    expect(formatLength(mm, { unit: 'mm', decimals })).toBe(text);
  });

  it.each(FRACTIONS_WRITTEN)('writes %d mm in parts of 1/%d as %s', (mm, denominator, text) => {
    expect(formatLength(mm, { unit: 'in', denominator })).toBe(text);
  });

  it('writes decimal inches, rounded as on paper', () => {
    expect(formatLength(25.4 * 1.005, { unit: 'in', decimals: 2 })).toBe('1.01');
    expect(formatLength(645.054, { unit: 'in', decimals: 3 })).toBe('25.396'); // 25.39583 by hand
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, 1_000_001, -1e21])('throws for %d mm', (mm) => {
    expect(() => formatLength(mm, { unit: 'mm', decimals: 2 })).toThrow(RangeError);
    expect(() => formatLength(mm, { unit: 'in', denominator: 64 })).toThrow(RangeError);
  });

  it('throws for steps that do not exist', () => {
    expect(() => formatLength(1, { unit: 'mm', decimals: 7 })).toThrow('0 to 6 decimals');
    expect(() => formatLength(1, { unit: 'mm', decimals: 1.5 })).toThrow(RangeError);
    expect(() => formatLength(1, { unit: 'in', denominator: 10 as 8 })).toThrow('8, 16, 32 or 64');
  });
});
