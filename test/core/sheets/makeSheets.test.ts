import { beforeAll, describe, expect, it } from 'vitest';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { makeSheets } from '../../../src/core/sheets/makeSheets';
import { PAPERS } from '../../../src/core/sheets/papers';
import type { SheetContext } from '../../../src/core/sheets/parts/types';
import { SHEET_KINDS, TAPE_DOWN } from '../../../src/core/sheets/sheetKinds';
import type { Page } from '../../../src/core/sheets/types';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { FONTS } from '../../exporters/pdf/handMadeSheet';
import { boxOfPath, boxOfText } from '../../readback/boxes';
import { readWithPdfjs } from '../../readPdf/readWithPdfjs';
import { readWithPdfLib } from '../../readPdf/readWithPdfLib';
import { valueOf as answerOf } from '../document/valueOf';
import { itemBox, overlap } from './itemBox';
import { contextOf, INCH, MM } from './parts/partCase';
import { wholeProject } from './wholeProject';

const WHEN = '2026-01-01T00:00:00.000Z';
const ALL = [TAPE_DOWN.id, ...SHEET_KINDS.map(({ id }) => id)];
const paperNamed = (id: string) => {
  const paper = PAPERS.find((each) => each.id === id);
  if (paper === undefined) throw new Error(`There is no ${id}.`);
  return paper;
};

const demo = wholeProject(demoProject('demo', WHEN));

/** Papers, page sizes by hand: A4 210 × 297, Letter 8.5 × 11 in. */
const SIDES = { a4: [210, 297], letter: [215.9, 279.4] } as const;

const pagesOf = (context: SheetContext, chosen: readonly string[], paper: string) =>
  answerOf(makeSheets(chosen, paperNamed(paper), context));

describe('makeSheets', () => {
  it.each(
    KINDS.flatMap((kind) =>
      (['right', 'left'] as const).flatMap((hand) =>
        (['a4', 'letter'] as const).map((paper) => ({ name: kind.name, kind, hand, paper })),
      ),
    ),
  )('every sheet of $name, $hand hand, on $paper lies within its page', async ({ kind, hand, paper }) => {
    const made = wholeProject(kind.make('k', WHEN));
    const project = { ...made, instrument: { ...made.instrument, hand } };
    const context = await contextOf(project, hand === 'left' ? INCH : MM);
    for (const chosen of ALL.map((id) => [id])) {
      const result = makeSheets(chosen, paperNamed(paper), context);
      if (!result.ok) {
        // Only for its size may a sheet be refused, and then with what to do about it.
        expect(result.issues.map(({ code }) => code)).toEqual(['sheet.large']);
        expect(result.issues[0]?.message).toMatch(/would do/);
        continue;
      }
      expect(result.value.missing).toEqual([]);
      for (const page of result.value.document.pages) checkPage(page, SIDES[paper]);
    }
  });

  it('puts the template first, and counts every page', async () => {
    const { document, missing } = pagesOf(await contextOf(demo), [...ALL].reverse(), 'a4');
    expect(missing).toEqual([]);
    expect(document.pages[0]?.items.some(({ id }) => id === 'footprint')).toBe(true);
    const count = document.pages.length;
    const words = document.pages.map(({ items }) =>
      items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join('\n'),
    );
    for (const [index, text] of words.entries()) expect(text).toContain(`sheet ${index + 1} of ${count}`);
    expect(new Set(document.pages.map(({ width, height }) => `${width} ${height}`)).size).toBe(1);
  });

  it('leaves out what this instrument does not have, and says why', async () => {
    const plain = demoProject('demo', WHEN);
    const { document, missing } = pagesOf(await contextOf(plain), ['tape-down', 'inside-caul', 'window'], 'a4');
    expect(missing.map(({ path, code }) => [path, code])).toEqual([['inside-caul', 'sheet.noBody']]);
    expect(document.pages).toHaveLength(2);
    const nothing = makeSheets([], paperNamed('a4'), await contextOf(plain));
    expect(nothing).toMatchObject({ ok: false, issues: [{ code: 'sheet.none' }] });
  });

  it('keeps the template alone as it always was', async () => {
    const context = await contextOf(demo);
    const { document } = pagesOf(context, ['tape-down'], 'a4');
    expect(document.title).toBe('Wren 14: tape-down template');
    expect(document.pages).toHaveLength(1);
  });
});

/** Right size, both long lines, words of at least 2.9 mm inside 6.4 mm of white, no part over another. */
const checkPage = ({ width, height, items }: Page, sides: readonly [number, number]): void => {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  expect(short).toBeCloseTo(sides[0], 9);
  expect(long).toBeCloseTo(sides[1], 9);
  expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
  for (const id of ['long-across', 'long-along']) expect(items.filter((item) => item.id === id)).toHaveLength(1);
  for (const item of items) {
    const { minX, minY, maxX, maxY } = itemBox(item);
    expect(Math.min(minX, minY, width - maxX, height - maxY), `${item.id} leaves the page`).toBeGreaterThan(6.4);
    if (item.kind === 'text') expect(item.height).toBeGreaterThanOrEqual(2.9);
  }
  const names = items.filter(({ id }) => id.endsWith('-page-title') || id.startsWith('head-'));
  const others = items.filter((item) => item.kind === 'text' && !names.includes(item));
  for (const name of names)
    for (const other of others)
      expect(overlap(itemBox(name), itemBox(other)), `${name.id} on ${other.id}`).toBeLessThan(0.01);
};

describe('all sheets of the demo, read back', () => {
  let bytes: Uint8Array;
  beforeAll(async () => {
    const { document } = pagesOf(await contextOf(demo), ALL, 'a4');
    const made = answerOf(makePdf(document, FONTS));
    expect(made.missing).toEqual([]);
    bytes = made.bytes;
  });

  it('has no exponent in its content, and every word and line on the page', async () => {
    const { pages } = await readWithPdfjs(bytes);
    expect(pages.length).toBeGreaterThan(3);
    for (const { width, height, texts, paths } of pages) {
      expect([width, height].map((side) => Math.round(side)).sort()).toEqual([210, 297]);
      for (const box of [...texts.map(boxOfText), ...paths.map(boxOfPath)])
        expect(Math.min(box.minX, box.minY, width - box.maxX, height - box.maxY)).toBeGreaterThan(6.4);
    }
  });
});

/** The sheets that fit this paper, all in one file. */
const allThatFit = (context: SheetContext, paper: string) =>
  answerOf(
    makePdf(
      pagesOf(
        context,
        ALL.filter((id) => makeSheets([id], paperNamed(paper), context).ok),
        paper,
      ).document,
      FONTS,
    ),
  );

/** Sides in points, 72 to the inch and 25.4 mm to that, by hand. */
const POINTS = { a4: [595.275591, 841.889764], letter: [612, 792] } as const;

// A number with an exponent is none to a PDF: ISO 32000-1, 7.3.3.
describe.each(KINDS)('every sheet of $name as it stands in the file', (kind) => {
  it.each(
    (['right', 'left'] as const).flatMap((hand) => (['a4', 'letter'] as const).map((paper) => ({ hand, paper }))),
  )('has exact page boxes and no exponent: $hand hand, $paper', async ({ hand, paper }) => {
    const made = wholeProject(kind.make('k', WHEN));
    const context = await contextOf({ ...made, instrument: { ...made.instrument, hand } });
    const { pages } = await readWithPdfLib(allThatFit(context, paper).bytes);
    expect(pages.length).toBeGreaterThan(3);
    for (const { mediaBox, content } of pages) {
      const sides = mediaBox.slice(2).sort((one, other) => one - other);
      expect(sides).toEqual(POINTS[paper].map((side) => expect.closeTo(side, 4)));
      const numbers = content.replace(/<[0-9a-f]*>/g, '');
      expect(numbers.match(/\d[eE][+-]?\d/g)).toBeNull();
      expect(numbers).not.toMatch(/NaN|Infinity|undefined/);
    }
  });
});
