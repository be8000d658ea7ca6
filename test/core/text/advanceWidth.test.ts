import { describe, expect, it } from 'vitest';
import { advanceWidth } from '../../../src/core/text/advanceWidth';
import { CAPITAL_HEIGHT } from '../../../src/core/text/capitalHeight';
import { readTrueType } from './readTrueType';

const fonts = new URL('../../../public/fonts/', import.meta.url);
const originals = new URL('../../../node_modules/dejavu-fonts-ttf/ttf/', import.meta.url);

describe.each([
  { cut: 'regular', file: 'DejaVuSansCondensed.ttf' },
  { cut: 'bold', file: 'DejaVuSansCondensed-Bold.ttf' },
] as const)('the $cut cut', ({ cut, file }) => {
  const font = readTrueType(new URL(file, fonts));

  // Source: table hmtx of the font file itself, read by the OpenType specification.
  it('has the advance widths of the font file, and no others', () => {
    const wrong = Array.from({ length: 0x10000 }, (_, code) => code).filter((code) => {
      const glyph = font.glyphs.get(code);
      const expected = glyph === undefined ? undefined : font.advance(glyph) / font.unitsPerEm;
      return advanceWidth(String.fromCharCode(code), cut) !== expected;
    });
    expect(wrong).toEqual([]);
    expect(font.glyphs.size).toBeGreaterThan(900);
  });

  it('has the widths of the font that it was cut from', () => {
    const original = readTrueType(new URL(file, originals));
    for (const [code, glyph] of font.glyphs) {
      expect(font.advance(glyph), code.toString(16)).toBe(original.advance(original.glyphs.get(code) ?? 0));
    }
    expect(font.unitsPerEm).toBe(original.unitsPerEm);
  });

  it('has capitals as tall as placing by their middle takes them', () => {
    expect(font.top(font.glyphs.get('H'.charCodeAt(0)) ?? 0) / font.unitsPerEm).toBe(CAPITAL_HEIGHT);
  });

  // The blocks by the Unicode character charts; letters at the ends of each: Latin-1, Extended-A and -B, Greek, Cyrillic.
  it.each([...'Az~ÀÿĀſƀɏΆωЀӿ', ...'″′×±⌀≤≥♯♭½¼¾⅛⅜⅝⅞⅓⅔□☐°·–—…→↑↓←−²³µ€√≈✓‘’“”'])('has %s', (character) => {
    expect(advanceWidth(character, cut)).toBeGreaterThan(0);
  });
});
