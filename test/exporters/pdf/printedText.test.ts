import { describe, expect, it } from 'vitest';
import { measureText } from '../../../src/core/text/measureText';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { readWithPdfium } from '../../readPdf/readWithPdfium';
import { readWithPdfjs } from '../../readPdf/readWithPdfjs';
import { readWithPdfLib } from '../../readPdf/readWithPdfLib';
import { renderWithPdfium } from '../../readPdf/renderWithPdfium';
import { FONTS, handMadeSheet, textItem } from './handMadeSheet';
import { unwrap } from './unwrap';

const pdfOf = (...items: ReturnType<typeof textItem>[]) => unwrap(makePdf(handMadeSheet(210, 297, items), FONTS));

const READERS = [
  { reader: 'pdfjs', read: async (bytes: Uint8Array) => (await readWithPdfjs(bytes)).pages[0]?.texts ?? [] },
  { reader: 'PDFium', read: async (bytes: Uint8Array) => (await readWithPdfium(bytes))[0]?.texts ?? [] },
];

const SIGNS = 'Überprüfung 1/8″ → π ≤ ½ ⌀ ⅜ ±';

describe.each(READERS)('text as $reader extracts it', ({ read }) => {
  it.each([SIGNS, 'Łódź ŐŰ ığş ȧ', 'Κιθάρα Гитара', '″ ′ × − … “quoted” 5 µm √2 ≈ 1.414 ✓', 'A (B) \\ <C>'])(
    '%s',
    async (text) => {
      const texts = await read(pdfOf(textItem(text), textItem(text, { at: { x: 20, y: 60 }, role: 'heading' })).bytes);
      expect(texts.map((run) => run.text)).toEqual([text, text]);
    },
  );

  it('a lacking character is a box, and the rest prints', async () => {
    const { bytes, missing } = pdfOf(textItem('Koa 木 1/8″ 🎸 木'), textItem('日', { at: { x: 20, y: 60 } }));
    expect(missing).toEqual(['木', '🎸', '日']);
    expect((await read(bytes)).map(({ text }) => text)).toEqual(['Koa □ 1/8″ □ □', '□']);
  });

  // Turned by 30° clockwise about (100, 100), size 5: the baseline starts 0.3645 · 5 below the anchor along the text's
  // own down direction (−sin 30°, cos 30°) = (−0.5, 0.8660254), by hand (99.08875, 101.57832).
  it('turns clockwise, with the anchor midway up the capitals', async () => {
    const [text] = await read(pdfOf(textItem('H', { at: { x: 100, y: 100 }, height: 5, angle: Math.PI / 6 })).bytes);
    expect(text?.angle).toBeCloseTo(Math.PI / 6, 4);
    expect(text?.height).toBeCloseTo(5, 4);
    expect(text?.start.x).toBeCloseTo(99.08875, 3);
    expect(text?.start.y).toBeCloseTo(101.57832, 3);
  });
});

describe('widths', () => {
  // jsPDF cuts each width in the file down to a whole thousandth of an em.
  it('are those that pdfjs finds in the file', async () => {
    const items = ['label', 'heading'] as const;
    const { bytes } = pdfOf(
      ...items.map((role, index) => textItem(SIGNS, { role, at: { x: 10, y: 50 + 20 * index }, height: 10 })),
    );
    const texts = (await readWithPdfjs(bytes)).pages[0]?.texts ?? [];
    for (const [index, cut] of (['regular', 'bold'] as const).entries()) {
      const over = measureText(SIGNS, 10, cut) - (texts[index]?.width ?? Number.NaN);
      expect(over).toBeGreaterThanOrEqual(-1e-4);
      expect(over).toBeLessThan(SIGNS.length * 0.001 * 10);
    }
  });
});

/** Bounds of what is darker than half grey, mm. */
async function inkOf(bytes: Uint8Array) {
  const { width, grey, pixelsPerMm } = await renderWithPdfium(bytes, 0, 300);
  const dark = Array.from(grey.keys()).filter((index) => (grey[index] ?? 255) < 128);
  const columns = dark.map((index) => index % width);
  const rows = dark.map((index) => Math.floor(index / width));
  const least = (values: number[]) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY) / pixelsPerMm;
  const most = (values: number[]) => (values.reduce((a, b) => Math.max(a, b), -1) + 1) / pixelsPerMm;
  return { left: least(columns), right: most(columns), top: least(rows), bottom: most(rows) };
}

describe('the picture of a text', () => {
  /** Two pixels at 300 dpi, mm. */
  const TOLERANCE = 0.17;

  // Capitals of DejaVu are 0.729 of the size tall: 29.16 mm at 40 mm. H is as wide left as right of its middle.
  it.each([
    { angle: 0, wide: 'across' },
    { angle: Math.PI / 2, wide: 'down' },
  ])('stands about its anchor, turned by $angle', async ({ angle, wide }) => {
    const item = textItem('H', { at: { x: 100, y: 150 }, height: 40, anchor: 'middle', angle });
    const ink = await inkOf(pdfOf(item).bytes);
    const tall = wide === 'across' ? ink.bottom - ink.top : ink.right - ink.left;
    expect(Math.abs(tall - 29.16)).toBeLessThan(TOLERANCE);
    expect(Math.abs((ink.left + ink.right) / 2 - 100)).toBeLessThan(TOLERANCE);
    expect(Math.abs((ink.top + ink.bottom) / 2 - 150)).toBeLessThan(TOLERANCE);
  });

  it('ends at an end anchor and starts at a start anchor', async () => {
    const end = await inkOf(pdfOf(textItem('H', { at: { x: 100, y: 150 }, height: 40, anchor: 'end' })).bytes);
    const start = await inkOf(pdfOf(textItem('H', { at: { x: 100, y: 150 }, height: 40 })).bytes);
    expect(end.right).toBeLessThan(100);
    expect(start.left).toBeGreaterThan(100);
    expect(Math.abs(100 - end.right - (start.left - 100))).toBeLessThan(TOLERANCE);
  });
});

describe('the font', () => {
  it('is embedded in the cuts that are used', async () => {
    const fontsOf = async (...items: ReturnType<typeof textItem>[]) =>
      (await readWithPdfLib(pdfOf(...items).bytes)).fonts;
    const regular = { name: 'DejaVuSansCondensed', embedded: true };
    const bold = { name: 'DejaVuSansCondensed-Bold', embedded: true };
    expect(await fontsOf(textItem('H'))).toEqual([regular]);
    expect(await fontsOf(textItem('H', { role: 'key' }))).toEqual([bold]);
    expect(await fontsOf(textItem('H'), textItem('H', { role: 'heading' }))).toEqual([regular, bold]);
  });
});
