import { beforeAll, describe, expect, it } from 'vitest';
import { readWithPdfjs } from '../readPdf/readWithPdfjs';
import type { ReadPage } from '../readPdf/types';
import { boxOfPath, boxOfText } from './boxes';
import { EVERY_TEMPLATE } from './everyTemplate';
import { makeTemplate } from './makeTemplate';

/** What printers may leave white at each edge, mm: 1/4 in and a little, common practice, no source. */
const WHITE = 6.4;
/** Nothing smaller is set on the sheet, mm. The file rounds a size to a hundred-thousandth of a point. */
const SMALLEST = 2.9 - 1e-5;

describe.each(EVERY_TEMPLATE)('$instrument, $paper, $unit, $hand hand', (wanted) => {
  let pages: readonly ReadPage[];
  beforeAll(async () => {
    pages = (await readWithPdfjs(makeTemplate(wanted))).pages;
  });

  it('keeps words and lines within what a printer can reach', () => {
    for (const { width, height, texts, paths } of pages)
      for (const box of [...texts.map(boxOfText), ...paths.map(boxOfPath)]) {
        expect(Math.min(box.minX, box.minY, width - box.maxX, height - box.maxY)).toBeGreaterThan(WHITE);
      }
  });

  it('sets no word under 2.9 mm', () => {
    const heights = pages.flatMap(({ texts }) => texts.map(({ height }) => height));
    expect(Math.min(...heights)).toBeGreaterThan(SMALLEST);
  });
});
