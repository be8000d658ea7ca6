import { describe, expect, it } from 'vitest';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { readWithPdfium } from '../../readPdf/readWithPdfium';
import { readWithPdfjs } from '../../readPdf/readWithPdfjs';
import { readWithPdfLib } from '../../readPdf/readWithPdfLib';
import { FONTS, handMadeSheet } from './handMadeSheet';
import { unwrap } from './unwrap';

// Points: mm · 72 / 25.4 by hand; 1 in = 25.4 mm exactly. A4 by ISO 216, Letter 8.5 × 11 in; 5080 mm by ISO 32000-1 C.2.
const SIZES = [
  { name: 'A4', width: 210, height: 297, points: [595.275590551, 841.88976378] },
  { name: 'A4 landscape', width: 297, height: 210, points: [841.88976378, 595.275590551] },
  { name: 'Letter', width: 215.9, height: 279.4, points: [612, 792] },
  { name: '99 × 210', width: 99, height: 210, points: [280.62992126, 595.275590551] },
  { name: '700 × 300', width: 700, height: 300, points: [1984.251968504, 850.393700787] },
  { name: '300 × 700', width: 300, height: 700, points: [850.393700787, 1984.251968504] },
  { name: '200 × 200', width: 200, height: 200, points: [566.929133858, 566.929133858] },
  { name: 'nearly the largest', width: 5079.9, height: 5079.9, points: [14399.716535433, 14399.716535433] },
];

/** Coordinates in the file have five decimals of a point. */
const HALF_A_LAST_DECIMAL = 0.5000001e-5;

describe.each(SIZES)('$name', ({ width, height, points }) => {
  it('has an exact media box, no crop box and no rotation', async () => {
    const { bytes } = unwrap(makePdf(handMadeSheet(width, height, []), FONTS));
    const { pages } = await readWithPdfLib(bytes);
    expect(pages).toHaveLength(1);
    const [page] = pages;
    expect(page?.mediaBox.slice(0, 2)).toEqual([0, 0]);
    for (const side of [0, 1]) {
      const off = Math.abs((page?.mediaBox[2 + side] ?? Number.NaN) - (points[side] ?? Number.NaN));
      expect(off).toBeLessThanOrEqual(HALF_A_LAST_DECIMAL);
    }
    expect(page?.cropBox).toBeNull();
    expect(page?.rotation).toBe(0);
  });

  it('is as large to pdfjs and to PDFium', async () => {
    const { bytes } = unwrap(makePdf(handMadeSheet(width, height, []), FONTS));
    for (const { pages } of [await readWithPdfjs(bytes), { pages: await readWithPdfium(bytes) }]) {
      const [page] = pages;
      expect(Math.abs((page?.width ?? Number.NaN) - width)).toBeLessThan(0.001);
      expect(Math.abs((page?.height ?? Number.NaN) - height)).toBeLessThan(0.001);
      expect(page?.rotation).toBe(0);
    }
  });
});

describe('several pages', () => {
  it('are all of one size', async () => {
    const { bytes } = unwrap(makePdf(handMadeSheet(297, 210, [], [], []), FONTS));
    const boxes = (await readWithPdfLib(bytes)).pages.map(({ mediaBox }) => mediaBox);
    expect(boxes).toHaveLength(3);
    expect(boxes[1]).toEqual(boxes[0]);
    expect(boxes[2]).toEqual(boxes[0]);
  });
});
