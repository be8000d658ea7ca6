import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isWholeTrueType } from '../../../src/exporters/pdf/isWholeTrueType';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { subsetTrueType } from '../../../src/exporters/pdf/subsetTrueType';
import { readWithPdfLib } from '../../readPdf/readWithPdfLib';
import { type Picture, renderWithPdfium } from '../../readPdf/renderWithPdfium';
import { FONTS, handMadeSheet, textItem } from './handMadeSheet';
import { unwrap } from './unwrap';

/** Letters of one glyph, of letter and accent, of two accents, and of other alphabets; signs; the box. */
const LETTERS = Array.from('AgéÅčŐǻЙёΐΩß½⅜″⌀♭□→✓');
const SIZE = 20;
const DPI = 254;
const PIXELS_PER_MM = 10;
const PAGE = 40;
/** Share of an em that a capital is tall: 1493 of 2048, table OS/2 of the font. */
const CAPITAL = 1493 / 2048;

/** Ink in pixels, and its centre of gravity. */
const inkOf = ({ width, grey }: Pick<Picture, 'width' | 'grey'>) => {
  let [sum, x, y] = [0, 0, 0];
  for (const [index, value] of grey.entries()) {
    const ink = (255 - value) / 255;
    sum += ink;
    x += ink * (index % width);
    y += ink * Math.floor(index / width);
  }
  return { sum, x: x / sum, y: y / sum };
};

/** The letter by another program, from the whole font: its baseline and left end as the sheet has them. */
const drawnByResvg = (letter: string, weight: 'normal' | 'bold') => {
  const baseline = PAGE / 2 + (CAPITAL / 2) * SIZE;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${PAGE}" height="${PAGE}"><rect width="${PAGE}" height="${PAGE}" fill="#fff"/><text x="10" y="${baseline}" font-family="DejaVu Sans Condensed" font-weight="${weight}" font-size="${SIZE}">${letter}</text></svg>`;
  const file = weight === 'bold' ? 'DejaVuSansCondensed-Bold.ttf' : 'DejaVuSansCondensed.ttf';
  const fontFiles = [fileURLToPath(new URL(`../../../public/fonts/${file}`, import.meta.url))];
  const picture = new Resvg(svg, {
    font: { fontFiles, loadSystemFonts: false, defaultFontFamily: 'DejaVu Sans Condensed' },
    fitTo: { mode: 'zoom', value: PIXELS_PER_MM },
  }).render();
  return { width: picture.width, grey: picture.pixels.filter((_, index) => index % 4 === 0) };
};

describe.each(['regular', 'bold'] as const)('%s letters in a file', (cut) => {
  it.each(LETTERS)('%s is drawn as resvg draws it from the whole font', async (letter) => {
    const item = textItem(letter, {
      at: { x: 10, y: PAGE / 2 },
      height: SIZE,
      role: cut === 'bold' ? 'heading' : 'label',
    });
    const { bytes } = unwrap(makePdf(handMadeSheet(PAGE, PAGE, [item]), FONTS));
    const ours = inkOf(await renderWithPdfium(bytes, 0, DPI));
    const other = inkOf(drawnByResvg(letter, cut === 'bold' ? 'bold' : 'normal'));
    expect(ours.sum).toBeGreaterThan(200);
    expect(ours.sum / other.sum).toBeCloseTo(1, 1.7);
    expect(Math.hypot(ours.x - other.x, ours.y - other.y)).toBeLessThan(1.5);
  });
});

describe('subsetTrueType', () => {
  const glyphs = (font: Uint8Array): number => {
    const view = new DataView(font.buffer, font.byteOffset);
    const records = Array.from({ length: view.getUint16(4) }, (_, index) => 12 + 16 * index);
    const maxp = records.find((record) => String.fromCharCode(...font.subarray(record, record + 4)) === 'maxp') ?? 0;
    return view.getUint16(view.getUint32(maxp + 8) + 4);
  };

  it('holds the missing glyph, each letter once, and what an accented letter is made of', () => {
    expect(glyphs(subsetTrueType(FONTS.regular, 'AAB'))).toBe(3);
    // Two letters that share an accent, with their letters: é, è of e and two accents, by the font's composite glyphs.
    expect(glyphs(subsetTrueType(FONTS.regular, 'éèe'))).toBe(6);
    expect(glyphs(subsetTrueType(FONTS.regular, '木'))).toBe(1);
  });

  it('is a whole font whatever the characters, the same for the same characters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
        const made = subsetTrueType(FONTS.bold, text);
        expect(isWholeTrueType(made)).toBe(true);
        expect(subsetTrueType(FONTS.bold, `${text}${text}`)).toEqual(made);
      }),
      { seed: 20, numRuns: 200 },
    );
  });

  it('leaves the font as it was, and the file short', async () => {
    const before = FONTS.regular.slice();
    const { bytes } = unwrap(makePdf(handMadeSheet(PAGE, PAGE, [textItem('Bridge é')]), FONTS));
    expect(FONTS.regular).toEqual(before);
    expect((await readWithPdfLib(bytes)).pages).toHaveLength(1);
    expect(bytes.length).toBeLessThan(5000);
  });
});
