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
    // 0.0059 in is 0.4/64 and would read 0; 0.0748 in is 4.8/64, and 5/64 is 4 % more; 6.5 mm is 16.4/64, 2 % more than 1/4.
    [0.15, { unit: 'in', denominator: 64 }, '0.0059'],
    [1.9, { unit: 'in', denominator: 64 }, '0.0748'],
    [6.5, { unit: 'in', denominator: 64 }, '1/4'],
    [645, { unit: 'in', decimals: 3 }, '25.3937'],
    [3.175, { unit: 'in', decimals: 3 }, '0.125'],
  ] as const)('writes %d mm in %j as %s', (mm, style, text) => {
    expect(lengthText(mm, style)).toBe(text);
  });
});
