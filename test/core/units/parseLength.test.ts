import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, type LengthStyle } from '../../../src/core/units/formatLength';
import { parseLength } from '../../../src/core/units/parseLength';
import { INCH_IN_MM, LENGTHS_READ, LENGTHS_REFUSED } from '../../reference/units';

describe('parseLength', () => {
  it.each(LENGTHS_READ)('reads %j in a field of %s as %d mm', (text, unit, mm) => {
    const read = parseLength(text, unit);
    expect(read.ok && read.value).toBeCloseTo(mm, 9);
  });

  it.each(LENGTHS_REFUSED)('refuses %j with %s', (text, code, says) => {
    const read = parseLength(text, 'mm');
    expect(read.ok).toBe(false);
    const issues = read.ok ? [] : read.issues;
    expect(issues).toEqual([{ path: '', code, severity: 'error', message: expect.stringContaining(says) }]);
  });

  // By hand from Unicode's names: each sign is its two numbers.
  it.each([
    ...['¼ 1/4', '½ 1/2', '¾ 3/4', '⅐ 1/7', '⅑ 1/9', '⅒ 1/10', '⅓ 1/3', '⅔ 2/3', '⅕ 1/5', '⅖ 2/5', '⅗ 3/5', '⅘ 4/5'],
    ...['⅙ 1/6', '⅚ 5/6', '⅛ 1/8', '⅜ 3/8', '⅝ 5/8', '⅞ 7/8', '↉ 0/3'],
  ])('reads the fraction sign in %s', (row) => {
    const [sign = '', fraction = ''] = row.split(' ');
    const [upper, lower] = fraction.split('/').map(Number);
    const read = parseLength(`3${sign}`, 'mm');
    expect(read.ok && read.value).toBeCloseTo(3 + Number(upper) / Number(lower), 12);
  });

  it('writes zero without a sign', () => {
    const read = parseLength('-0', 'mm');
    expect(read.ok && Object.is(read.value, 0)).toBe(true);
  });

  it('answers every text with a finite number or an issue, and never throws', () => {
    const piece = fc.constantFrom(...'0123456789 .,/-+⅜⅛″"\'minche'.split(''), 'mm', 'in', '1/2', 'e5', '\u00a0');
    const text = fc.oneof(
      fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join('')),
      fc.string(),
    );
    fc.assert(
      fc.property(text, fc.constantFrom('mm' as const, 'in' as const), (typed, unit) => {
        const read = parseLength(typed, unit);
        if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
        else expect(read.issues[0]?.message.length).toBeGreaterThan(10);
      }),
      { seed: 2501, numRuns: 2000 },
    );
  });

  it('reads back what formatLength writes, within half a step', () => {
    const decimals = fc.integer({ min: 0, max: 6 });
    const styles: fc.Arbitrary<LengthStyle> = fc.oneof(
      fc.record({ unit: fc.constant('mm' as const), decimals }),
      fc.record({ unit: fc.constant('in' as const), decimals }),
      fc.record({ unit: fc.constant('in' as const), denominator: fc.constantFrom(8 as const, 16, 32, 64) }),
    );
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), styles, (mm, style) => {
        const read = parseLength(formatLength(mm, style), style.unit);
        const step = 'decimals' in style ? 10 ** -style.decimals : 1 / style.denominator;
        const half = (step * (style.unit === 'in' ? INCH_IN_MM : 1)) / 2;
        expect(read.ok && Math.abs(read.value - mm)).toBeLessThanOrEqual(half + 1e-9);
        expect(read.ok).toBe(true);
      }),
      { seed: 2502, numRuns: 1000 },
    );
  });
});
