import { describe, expect, it } from 'vitest';
import { measureText } from '../../../src/core/text/measureText';

// H 1386 and space 585 units of 2048: read here from table hmtx of DejaVuSansCondensed.ttf 2.37; the sum is by hand.
describe('measureText', () => {
  it('adds advance widths: twice H and a space at 4 mm', () => {
    expect(measureText('H H', 4, 'regular')).toBeCloseTo(((2 * 1386 + 585) / 2048) * 4, 9);
  });

  it('is wider in bold', () => {
    expect(measureText('Saddle', 4, 'bold')).toBeGreaterThan(measureText('Saddle', 4, 'regular'));
  });

  it('grows with the size and is 0 for no text', () => {
    expect(measureText('Saddle', 8, 'regular')).toBeCloseTo(2 * measureText('Saddle', 4, 'regular'), 9);
    expect(measureText('', 4, 'regular')).toBe(0);
  });

  it('counts a lacking character as its box', () => {
    expect(measureText('木', 4, 'regular')).toBe(measureText('□', 4, 'regular'));
  });

  it('takes an accent typed apart from its letter as one', () => {
    expect(measureText('e\u0301', 4, 'regular')).toBe(measureText('é', 4, 'regular'));
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a size of %s', (height) => {
    expect(() => measureText('H', height, 'regular')).toThrow(RangeError);
  });
});
