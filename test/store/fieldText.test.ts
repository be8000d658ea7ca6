import { describe, expect, it } from 'vitest';
import { lengthText } from '../../src/store/fieldText';

describe('lengthText', () => {
  // Hand arithmetic; 3.175 mm is 1/8 in exactly by the inch of 25.4 mm, 645 mm is 25.3937 in = 25 25.2/64.
  it.each([
    [645, { unit: 'mm', decimals: 2 }, '645.0'],
    [3.175, { unit: 'mm', decimals: 2 }, '3.175'],
    [3.175, { unit: 'mm', decimals: 1 }, '3.175'],
    [44.45, { unit: 'mm', decimals: 1 }, '44.45'],
    [0, { unit: 'mm', decimals: 2 }, '0.0'],
    [-1.5, { unit: 'mm', decimals: 2 }, '-1.5'],
    [3.175, { unit: 'in', denominator: 64 }, '1/8'],
    [645, { unit: 'in', denominator: 64 }, '25 25/64'],
    [645, { unit: 'in', decimals: 3 }, '25.3937'],
    [3.175, { unit: 'in', decimals: 3 }, '0.125'],
  ] as const)('writes %d mm in %j as %s', (mm, style, text) => {
    expect(lengthText(mm, style)).toBe(text);
  });
});
