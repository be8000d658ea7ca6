import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { makeSheets } from '../../../src/core/sheets/makeSheets';
import type { Page } from '../../../src/core/sheets/types';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { FONTS } from '../../exporters/pdf/handMadeSheet';
import { boxOfPath } from '../../readback/boxes';
import { readWithPdfjs } from '../../readPdf/readWithPdfjs';
import { valueOf as answerOf } from '../document/valueOf';
import { itemBox } from './itemBox';
import { contextOf } from './parts/partCase';

const WHEN = '2026-01-01T00:00:00.000Z';
const A4 = { id: 'a4', name: 'A4', width: 210, height: 297 };
/** Of the paper as it lies upright: across its short side and along its long one. */
const PROFILE = {
  id: 'p',
  printer: 'Bench printer',
  paper: 'a4',
  factorX: 1.0031,
  factorY: 0.9988,
  sigmaX: 0.001,
  sigmaY: 0.001,
  date: '2026-01-01',
};

const pagesOf = async (chosen: readonly string[], profile: typeof PROFILE | null, kind?: string) => {
  const make = KINDS.find(({ name }) => name === kind)?.make ?? demoProject;
  return answerOf(makeSheets(chosen, A4, await contextOf(make('demo', WHEN)), profile)).document;
};
const words = ({ items }: Page): string =>
  items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join('\n');
const lineOf = ({ items }: Page, id: string) => {
  const item = items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`There is no ${id}.`);
  return itemBox(item);
};

describe('sheets corrected for a printer', () => {
  it('say on every page what they carry, and with no printer that they carry nothing', async () => {
    const corrected = await pagesOf(['tape-down', 'window', 'drill-card'], PROFILE);
    expect(corrected.pages.length).toBeGreaterThan(1);
    for (const page of corrected.pages) {
      expect(words(page)).toContain('print correction 1.0031 × 0.9988');
      expect(words(page)).toContain('Bench printer');
      expect(words(page)).toContain('2026-01-01');
      expect(words(page)).not.toContain('no print correction');
    }
    const plain = await pagesOf(['tape-down', 'window', 'drill-card'], null);
    for (const page of plain.pages) expect(words(page)).toContain('no print correction (1.000 × 1.000)');
    expect(plain.fileKey).not.toBe(corrected.fileKey);
  });

  // Upright A4: the long lines start at 20 mm from the left and 10 from the top and are 180 and 240 long. By hand
  // 20 · 1.0031 = 20.062, 180 · 1.0031 = 180.558; 10 · 0.9988 = 9.988, 240 · 0.9988 = 239.712.
  it('are stretched about the top left corner, each way by its factor, on pages of the same size', async () => {
    const { pages } = await pagesOf(['drill-card'], PROFILE);
    const [page] = pages;
    if (page === undefined) throw new Error('Expected a page.');
    expect([page.width, page.height]).toEqual([210, 297]);
    const across = lineOf(page, 'long-across');
    expect([across.minX, across.maxX - across.minX]).toEqual([expect.closeTo(20.062, 9), expect.closeTo(180.558, 9)]);
    const along = lineOf(page, 'long-along');
    expect([along.minY, along.maxY - along.minY]).toEqual([expect.closeTo(9.988, 9), expect.closeTo(239.712, 9)]);
    const [plain] = (await pagesOf(['drill-card'], null)).pages;
    const heights = (items: Page['items']) => items.flatMap((item) => (item.kind === 'text' ? [item.height] : []));
    expect(heights(page.items)).toEqual(heights(plain?.items ?? []));
  });

  it('turn with the paper: a page on its side carries the factors the other way round', async () => {
    const { pages } = await pagesOf(['tape-down'], PROFILE, 'Classical guitar');
    const [page] = pages;
    if (page === undefined) throw new Error('Expected a page.');
    expect(page.width).toBe(297);
    expect(words(page)).toContain('print correction 0.9988 × 1.0031');
    // On its side A4 has 297 − 10 − 20 = 267 across: a line of 260. By hand 260 · 0.9988 = 259.688.
    const across = lineOf(page, 'long-across');
    expect(across.maxX - across.minX).toBeCloseTo(259.688, 9);
  });

  it('are refused where they would leave what a printer can reach', async () => {
    const context = await contextOf(demoProject('demo', WHEN));
    const made = makeSheets(['tape-down'], A4, context, { ...PROFILE, factorX: 1.05 });
    expect(made.ok ? '' : made.issues[0]?.code).toBe('correction.large');
  });

  // The calibration square is 100 mm: by hand 100.31 and 99.88.
  it('print the square by the factors, read back from the file', async () => {
    const { bytes } = answerOf(makePdf(await pagesOf(['tape-down'], PROFILE), FONTS));
    const [page] = (await readWithPdfjs(bytes)).pages;
    const sides = (page?.paths ?? []).map(boxOfPath).map((box) => [box.maxX - box.minX, box.maxY - box.minY]);
    expect(sides.filter(([x = 0, y = 0]) => Math.abs(x - 100.31) < 0.001 && Math.abs(y - 99.88) < 0.001)).toHaveLength(
      1,
    );
  });

  it('cut a long name of a printer, never the date', async () => {
    const long = { ...PROFILE, printer: 'The wide one under the window of the finishing room' };
    const [page] = (await pagesOf(['tape-down'], long)).pages;
    expect(page === undefined ? '' : words(page)).toMatch(/for The wide one.*…, read 2026-01-01/);
  });
});
