import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/core/geom/types';
import { frameOf } from '../../../src/core/sheets/frame';
import { makeSheets } from '../../../src/core/sheets/makeSheets';
import { laidOn } from '../../../src/core/sheets/pagesOn';
import type { SheetPart } from '../../../src/core/sheets/parts/types';
import { sheetLine } from '../../../src/core/sheets/sheetItems';
import type { Paper, SheetDocument } from '../../../src/core/sheets/types';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { FONTS, handMadeSheet } from '../../exporters/pdf/handMadeSheet';
import { readWithPdfjs } from '../../readPdf/readWithPdfjs';
import type { ReadPage, ReadPath } from '../../readPdf/types';
import { steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';
import { contextOf, INCH, MM } from './parts/partCase';
import { wholeProject } from './wholeProject';

const A4: Paper = { id: 'a4', name: 'A4', width: 210, height: 297 };
const LETTER: Paper = { id: 'letter', name: 'Letter', width: 215.9, height: 279.4 };
const TABLOID: Paper = { id: 'tabloid', name: 'Tabloid', width: 279.4, height: 431.8 };

const readOf = async (document: SheetDocument): Promise<readonly ReadPage[]> =>
  (await readWithPdfjs(answerOf(makePdf(document, FONTS)).bytes)).pages;

const extent = ({ points }: ReadPath) => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { minX, maxX, minY, maxY, width: maxX - minX, height: maxY - minY };
};
const near = (one: number, other: number) => Math.abs(one - other) < 0.01;

/** Middles of the rings of join marks: circles of 4 mm about a cross of 10 mm, so found by what is printed alone. */
const marksOn = ({ paths }: ReadPage): readonly Point[] => {
  const boxes = paths.map(extent);
  return boxes
    .filter(({ width, height }) => near(width, 4) && near(height, 4))
    .map(({ minX, maxX, minY, maxY }) => ({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 }))
    .filter(({ x, y }) =>
      boxes.some(
        (box) => near(box.width, 10) && box.height < 0.01 && near((box.minX + box.maxX) / 2, x) && near(box.minY, y),
      ),
    );
};

/** How far a page has to be moved for its marks to lie on those of the page before. */
const joined = (before: ReadPage, after: ReadPage): Point => {
  const [ones, others] = [marksOn(before), marksOn(after)];
  expect(ones).toHaveLength(2);
  expect(others).toHaveLength(2);
  const moves = ones.map(({ x, y }, index) => ({ x: x - (others[index]?.x ?? 0), y: y - (others[index]?.y ?? 0) }));
  const [first, second] = moves;
  if (first === undefined || second === undefined) throw new Error('Expected two marks.');
  // Both marks ask for the same move, within 2 µm.
  expect(Math.hypot(first.x - second.x, first.y - second.y)).toBeLessThan(0.002);
  return first;
};

const only = (found: readonly ReadPath[]): ReturnType<typeof extent> => {
  const [path] = found;
  if (path === undefined || found.length > 1) throw new Error(`Expected one line, found ${found.length}.`);
  return extent(path);
};

/** The square line is the only line of 0.7 mm (its width on paper after ISO 128, two times the wide line's 0.35). */
const squareLineOn = ({ paths }: ReadPage) => only(paths.filter(({ width }) => near(width, 0.7)));
/** The line on the 12th fret: 0.25 mm wide and as long as the square line. */
const fretLineOn = ({ paths }: ReadPage, long: number) =>
  only(paths.filter((path) => near(path.width, 0.25) && near(extent(path).width, long) && extent(path).height < 0.01));

// The steel-string of scale 645: 12th fret at 322.5; square line at 620 from the nut in mm, so 297.5 from the fret. In inches
// the line stands at 24 1/2 in = 622.3, so 299.8 from the fret. All by hand.
const FROM_FRET = { mm: 297.5, in: 299.8 } as const;
/** Half the piece: see the placing gauge in reference/cards, 45.064551. */
const PIECE = 90.129102;

describe('the long placing gauge', () => {
  it.each([
    ['A4', A4, 'mm'],
    ['Letter', LETTER, 'in'],
    ['Letter', LETTER, 'mm'],
  ] as const)('joined by its marks is the drawing again, within 2 µm: %s, %s, %s', async (_, paper, unit) => {
    const context = await contextOf(steelWith({}), unit === 'mm' ? MM : INCH);
    const { document, tiled } = answerOf(makeSheets(['long-gauge'], paper, context));
    expect(tiled).toEqual([{ name: 'Placing gauge, 12th fret to saddle', pages: 2, whole: null }]);
    const [top, foot, ...others] = await readOf(document);
    expect(others).toEqual([]);
    if (top === undefined || foot === undefined) throw new Error('Expected two pages.');
    const move = joined(top, foot);
    const line = squareLineOn(foot);
    const fret = fretLineOn(top, line.width);
    expect(Math.abs(line.width - PIECE)).toBeLessThan(0.002);
    expect(Math.abs(line.minY + move.y - fret.minY - FROM_FRET[unit])).toBeLessThan(0.002);
    expect(Math.abs(line.minX + move.x - fret.minX)).toBeLessThan(0.002);
  });

  it('has its check distance printed, 100 mm from tick to tick across the join', async () => {
    const { document } = answerOf(makeSheets(['long-gauge'], A4, await contextOf(steelWith({}))));
    const [top, foot] = await readOf(document);
    if (top === undefined || foot === undefined) throw new Error('Expected two pages.');
    expect(top.texts.map(({ text }) => text)).toContain('across join A1–A2: 100.0 mm');
    // The gauge's own marks of this length lie left of 140.
    const tick = ({ paths }: ReadPage) =>
      only(
        paths.filter(
          (path) =>
            near(path.width, 0.25) &&
            near(extent(path).width, 6) &&
            extent(path).height < 0.01 &&
            extent(path).minX > 140,
        ),
      );
    expect(Math.abs(tick(foot).minY + joined(top, foot).y - tick(top).minY - 100)).toBeLessThan(0.002);
  });

  it('trusts no paper for its length, and says by how much the rule sets it', async () => {
    const { document } = answerOf(makeSheets(['long-gauge'], A4, await contextOf(steelWith({}))));
    const words = document.pages[0]?.items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' ');
    expect(words).toContain('Paper carries no length');
    expect(words).toContain('12th fret to square line 297.5 mm by steel rule');
  });

  it('has the treble on its own side for either hand, and reads upright', async () => {
    for (const hand of ['right', 'left'] as const) {
      const context = await contextOf(steelWith({ instrument: { hand } }));
      const items = answerOf(makeSheets(['long-gauge'], TABLOID, context)).document.pages[0]?.items ?? [];
      const x = (id: string) => {
        const item = items.find((each) => each.id === `long-gauge-${id}`);
        return item?.kind === 'text' ? item.at.x : Number.NaN;
      };
      expect(Math.sign(x('letter-treble') - x('letter-bass'))).toBe(hand === 'right' ? 1 : -1);
      expect(items.some((item) => item.kind === 'text' && item.text.includes(`${hand} hand`))).toBe(true);
    }
  });

  it('is one page where the paper holds it, and tells of a paper of the maker’s that would', async () => {
    const context = await contextOf(steelWith({}));
    const whole = answerOf(makeSheets(['long-gauge'], TABLOID, context));
    expect([whole.document.pages.length, whole.tiled]).toEqual([1, []]);
    const { tiled } = answerOf(makeSheets(['long-gauge'], A4, context, null, [A4, TABLOID]));
    expect(tiled.map((each) => each.whole)).toEqual(['Tabloid']);
  });
});

describe('a part of 400 × 300', () => {
  // Crosses of 8 at every 50 but where two tiles meet; nothing beyond 170 across under 210, so that three tiles are blank.
  const places = [20, 70, 120, 250, 300, 350].flatMap((x) =>
    [20, 70, 120, 270].flatMap((y) => (x > 170 && y > 210 ? [] : [{ x, y }])),
  );
  const part: SheetPart = {
    id: 'plan',
    name: 'Plan',
    width: 400,
    height: 300,
    whole: false,
    items: places.flatMap(({ x, y }, index) => [
      sheetLine(`level-${index}`, 'outline', { x: x - 4, y }, { x: x + 4, y }),
      sheetLine(`upright-${index}`, 'outline', { x, y: y - 4 }, { x, y: y + 4 }),
    ]),
  };
  const pagesOn = async ({ width, height }: Paper) => {
    const laid = laidOn(frameOf(width, height), [part], 'mm');
    if (laid === null) throw new Error('Expected pages.');
    expect(laid.cut.map(({ pages }) => pages)).toEqual([laid.pages.length]);
    return readOf(handMadeSheet(width, height, ...laid.pages));
  };
  /** Middles of the crosses, by their level lines of 8 mm, 0.35 wide. */
  const crosses = ({ paths }: ReadPage): readonly Point[] =>
    paths
      .filter((path) => near(path.width, 0.35) && near(extent(path).width, 8))
      .map((path) => ({ x: (extent(path).minX + extent(path).maxX) / 2, y: extent(path).minY }));

  // Steps between tiles, by hand: A4 leaves 180 × 257 − 22, so 165 and 220; Letter 185.9 × 239.4 − 22, so 170.9 and 202.4.
  it.each([
    ['A4', A4, 165, 220],
    ['Letter', LETTER, 170.9, 202.4],
  ] as const)(
    'comes on four pages of %s, blank ones dropped, each cross at its place',
    async (_, paper, across, along) => {
      const pages = await pagesOn(paper);
      const names = pages.map(({ texts }) =>
        texts.map(({ text }) => text).find((text) => text.startsWith('Plan, tile')),
      );
      expect(names).toEqual(['A1', 'B1', 'C1', 'A2'].map((name) => `Plan, tile ${name} of 3 × 2`));
      const steps = [
        { x: 0, y: 0 },
        { x: across, y: 0 },
        { x: 2 * across, y: 0 },
        { x: 0, y: along },
      ];
      // The frame begins 20 from the left and 10 + 22 from the top of a page.
      const found = pages.flatMap((page, index) =>
        crosses(page).map(({ x, y }) => ({ x: x - 20 + (steps[index]?.x ?? 0), y: y - 32 + (steps[index]?.y ?? 0) })),
      );
      for (const place of places) {
        const off = Math.min(...found.map(({ x, y }) => Math.hypot(x - place.x, y - place.y)));
        expect(off, `${place.x} ${place.y}`).toBeLessThan(0.002);
      }
      // Each is drawn 8.000 long on either paper: going from one to the other changes no size.
      for (const page of pages)
        for (const path of page.paths.filter((each) => near(each.width, 0.35) && near(extent(each).width, 8)))
          expect(Math.abs(extent(path).width - 8)).toBeLessThan(0.0002);
    },
  );

  it('has a map of all four pages on each, and a cross on the page’s own', async () => {
    const cells = (await pagesOn(A4)).map(({ paths }) =>
      paths
        .map(extent)
        .filter(({ width, height, minX, minY }) => near(width, 4) && near(height, 4) && minX > 180 && minY < 20),
    );
    // Four cells and the two strokes of the cross, at the right of the head: columns at 188, 192 and 196, rows at 10 and 14.
    expect(cells.map((each) => each.length)).toEqual([6, 6, 6, 6]);
    const own = cells.map((each) => {
      const corner = each.at(-1);
      return [Math.round(corner?.minX ?? 0), Math.round(corner?.minY ?? 0)];
    });
    expect(own).toEqual([
      [188, 10],
      [192, 10],
      [196, 10],
      [188, 14],
    ]);
  });
});

describe('what is of the bridge', () => {
  const outline = { shape: 'tie-block', parameters: { length: 278, full: 28, block: 80, corner: 0 } } as const;
  const wide = wholeProject(steelWith({ bridge: { outline } }));

  it.each(['window', 'finish-mask', 'sole-profile', 'tape-down'])(
    'is never cut: %s is refused, naming the maker’s own paper that holds it',
    async (sheet) => {
      const context = await contextOf(wide);
      const refused = makeSheets([sheet], A4, context, null, [A4, LETTER, TABLOID]);
      expect(refused).toMatchObject({ ok: false, issues: [{ code: 'sheet.large' }] });
      if (!refused.ok) expect(refused.issues[0]?.message).toContain('Of your papers Tabloid would do');
      expect(answerOf(makeSheets([sheet], TABLOID, context)).tiled).toEqual([]);
    },
  );

  it('tells of the usual papers when none of the maker’s holds it', async () => {
    const refused = makeSheets(['window'], A4, await contextOf(wide), null, [A4, LETTER]);
    expect(refused.ok ? '' : refused.issues[0]?.message).toMatch(/These papers would do: Legal, Tabloid, A3\.$/);
  });

  it('does not hold back a caul, which is cut and joined', async () => {
    const { document, tiled } = answerOf(makeSheets(['inside-caul'], A4, await contextOf(wide)));
    expect(tiled.map(({ name, pages }) => [name, pages])).toEqual([
      ['Inside caul, PLATE FACE', 2],
      ['Inside caul, CLAMP FACE', 2],
    ]);
    expect(document.pages).toHaveLength(4);
  });
});
