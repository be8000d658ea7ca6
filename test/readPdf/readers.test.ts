import {
  concatTransformationMatrix,
  lineTo,
  moveTo,
  PDFDocument,
  popGraphicsState,
  pushGraphicsState,
  StandardFonts,
  setDashPattern,
  setLineWidth,
  stroke,
} from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { readWithPdfium } from './readWithPdfium';
import { readWithPdfjs } from './readWithPdfjs';
import { readWithPdfLib } from './readWithPdfLib';
import { renderWithPdfium } from './renderWithPdfium';

/** A page of 720 × 360 pt, drawn by pdf-lib alone: a dashed line under a matrix that doubles and shifts, and a word. */
async function pageByPdfLib(): Promise<Uint8Array> {
  const document = await PDFDocument.create();
  const page = document.addPage([720, 360]);
  page.pushOperators(
    pushGraphicsState(),
    concatTransformationMatrix(2, 0, 0, 2, 72, 36),
    setLineWidth(3),
    setDashPattern([9, 4.5], 0),
    moveTo(0, 36),
    lineTo(144, 36),
    stroke(),
    popGraphicsState(),
  );
  page.drawText('Slot', { x: 72, y: 288, size: 36, font: await document.embedFont(StandardFonts.Helvetica) });
  return document.save();
}

// By hand, 72 pt = 25.4 mm: line from (72, 36 + 72) to (72 + 288, 108) pt of a page 360 pt tall, so 252 pt from the top:
// (25.4, 88.9) to (127, 88.9) mm; width 6 pt = 2.11667 mm; dash 18 and 9 pt = 6.35 and 3.175 mm; word at (25.4, 25.4), 12.7 tall.
describe.each([
  { reader: 'pdfjs', read: async (bytes: Uint8Array) => (await readWithPdfjs(bytes)).pages },
  { reader: 'PDFium', read: readWithPdfium },
])('$reader', ({ read }) => {
  it('finds lines and texts of a page that another program made', async () => {
    const [page] = await read(await pageByPdfLib());
    expect(page?.width).toBeCloseTo(254, 4);
    expect(page?.height).toBeCloseTo(127, 4);
    const [line] = page?.paths ?? [];
    const numbers = [
      ...(line?.points.flatMap(({ x, y }) => [x, y]) ?? []),
      line?.width ?? Number.NaN,
      ...(line?.dash ?? []),
    ];
    expect(numbers.map((number) => Number(number.toFixed(4)))).toEqual([25.4, 88.9, 127, 88.9, 2.1167, 6.35, 3.175]);
    const [word] = page?.texts ?? [];
    expect(word?.text).toBe('Slot');
    expect(word?.start.x).toBeCloseTo(25.4, 4);
    expect(word?.start.y).toBeCloseTo(25.4, 4);
    expect(word?.height).toBeCloseTo(12.7, 4);
  });
});

describe('the other readings', () => {
  it('a picture has the line where it lies', async () => {
    const picture = await renderWithPdfium(await pageByPdfLib(), 0, 144);
    const greyAt = (x: number, y: number) =>
      picture.grey[Math.floor(y * picture.pixelsPerMm) * picture.width + Math.floor(x * picture.pixelsPerMm)];
    expect([picture.width, picture.height]).toEqual([1440, 720]);
    expect(greyAt(28, 88.9)).toBe(0);
    expect(greyAt(28, 86)).toBe(255);
    expect(greyAt(33.3, 88.9)).toBe(255);
  });

  it('pdf-lib gives box, content and fonts', async () => {
    const { pages, fonts } = await readWithPdfLib(await pageByPdfLib());
    expect(pages.map(({ mediaBox, cropBox, rotation }) => [mediaBox, cropBox, rotation])).toEqual([
      [[0, 0, 720, 360], null, 0],
    ]);
    expect(pages[0]?.content).toContain('2 0 0 2 72 36 cm');
    expect(fonts).toEqual([]);
  });
});
