import { beforeAll, describe, expect, it } from 'vitest';
import { type RawReading, readWithPdfLib } from '../readPdf/readWithPdfLib';
import { EVERY_TEMPLATE } from './everyTemplate';
import { makeTemplate } from './makeTemplate';

// A4: 210 × 297 mm, ISO 216. Letter: 8.5 × 11 in, 612 × 792 pt. 72 pt to the inch, 25.4 mm to the inch, by hand.
const SIDES = { a4: [595.27559, 841.88976], letter: [612, 792] } as const;

describe.each(EVERY_TEMPLATE)('$instrument, $paper, $unit, $hand hand', (wanted) => {
  let reading: RawReading;
  beforeAll(async () => {
    reading = await readWithPdfLib(makeTemplate(wanted));
  });

  it('has pages of one size, that of the paper, upright or on its side', () => {
    const { pages } = reading;
    const [first] = pages;
    expect(pages.map(({ mediaBox }) => mediaBox)).toEqual(pages.map(() => first?.mediaBox));
    const [left, bottom, ...sides] = first?.mediaBox ?? [];
    expect([left, bottom]).toEqual([0, 0]);
    for (const [index, side] of sides.sort((a, b) => a - b).entries())
      expect(side).toBeCloseTo(SIDES[wanted.paper][index] ?? Number.NaN, 4);
  });

  it('is not turned and not cropped', () => {
    for (const { rotation, cropBox } of reading.pages) expect([rotation, cropBox]).toEqual([0, null]);
  });

  // ISO 32000-1, 12.2: what keeps a viewer from scaling, and lets it choose the tray.
  it('asks to be printed at true size', () => {
    const { viewerPreferences, catalog } = reading;
    expect(viewerPreferences).toMatchObject({ PrintScaling: '/None', PickTrayByPDFSize: 'true' });
    expect(catalog).toMatchObject({ Lang: '(en)', Version: '/1.7' });
  });

  it('carries both cuts of its font', () => {
    expect(reading.fonts).toEqual([
      { name: 'DejaVuSansCondensed', embedded: true },
      { name: 'DejaVuSansCondensed-Bold', embedded: true },
    ]);
  });
});
