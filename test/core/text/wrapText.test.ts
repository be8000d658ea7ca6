import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measureText } from '../../../src/core/text/measureText';
import { wrapText } from '../../../src/core/text/wrapText';

const NO_BREAK_SPACE = '\u00a0';
const widthOf = (text: string) => measureText(text, 4, 'regular');

describe('wrapText', () => {
  it('breaks at the last space that fits, and fits exactly', () => {
    expect(wrapText('tape the front edge', widthOf('tape the'), 4, 'regular')).toEqual(['tape the', 'front', 'edge']);
  });

  it('keeps line breaks and blank lines', () => {
    expect(wrapText('one\n\ntwo', 100, 4, 'regular')).toEqual(['one', '', 'two']);
    expect(wrapText('', 100, 4, 'regular')).toEqual(['']);
  });

  it('does not break at a no-break space', () => {
    const size = `3${NO_BREAK_SPACE}mm`;
    expect(wrapText(`slot ${size}`, widthOf('slot 3 m'), 4, 'regular')).toEqual(['slot', size]);
  });

  it('breaks a word that is too wide, at least one character to a line', () => {
    expect(wrapText('HHHHH', widthOf('HH'), 4, 'regular')).toEqual(['HH', 'HH', 'H']);
    expect(wrapText('HH', 0.1, 4, 'regular')).toEqual(['H', 'H']);
  });

  it('loses no word and keeps to the width', () => {
    const words = fc.array(fc.string({ unit: fc.constantFrom(...'Hiim.½木') }), { maxLength: 30 });
    fc.assert(
      fc.property(words, fc.double({ min: 3, max: 60, noNaN: true }), (parts, width) => {
        const lines = wrapText(parts.join(' '), width, 4, 'bold');
        expect(lines.join('').replaceAll(' ', '')).toBe(parts.join(''));
        for (const line of lines) {
          expect(measureText(line, 4, 'bold') <= width || Array.from(line).length === 1).toBe(true);
        }
      }),
      { seed: 11 },
    );
  });

  it.each([0, -1, Number.NaN])('refuses a width of %s', (width) => {
    expect(() => wrapText('H', width, 4, 'regular')).toThrow(RangeError);
  });
});
