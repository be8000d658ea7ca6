import { expect, it } from 'vitest';
import { showLength } from '../../../src/core/units/showLength';

// 600 mm; 23 5/8 in = 600.075 mm and 0.0625 in = 1.5875 mm by the inch of 25.4 mm.
it.each([
  [600, { unit: 'mm', decimals: 1 }, '600.0 mm'],
  [-1.25, { unit: 'mm', decimals: 2 }, '-1.25 mm'],
  [600.075, { unit: 'in', denominator: 64 }, '23 5/8″'],
  [1.5875, { unit: 'in', decimals: 4 }, '0.0625″'],
] as const)('showLength writes %d in %o as %s', (mm, style, text) => {
  expect(showLength(mm, style)).toBe(text);
});
