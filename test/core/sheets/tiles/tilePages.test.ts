import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../src/core/drawing/types';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { frameOf } from '../../../../src/core/sheets/frame';
import type { SheetPart } from '../../../../src/core/sheets/parts/types';
import { sheetLine, sheetPath, sheetText } from '../../../../src/core/sheets/sheetItems';
import { tilePages } from '../../../../src/core/sheets/tiles/tilePages';
import { itemBox } from '../itemBox';

/** A4 upright: 20 to 200 across and 10 to 267 along, so 180 × 257; under the head of 22 a tile shows 180 × 235. */
const A4 = frameOf(210, 297);
const TOP = 32;

const part = (width: number, height: number, items: readonly Item[], whole = false): SheetPart => ({
  id: 'plan',
  name: 'Plan of the top',
  width,
  height,
  items,
  whole,
});
const frame = (width: number, height: number) => [
  sheetLine('top', 'frame', { x: 0.5, y: 0.5 }, { x: width - 0.5, y: 0.5 }),
  sheetLine('foot', 'frame', { x: 0.5, y: height - 0.5 }, { x: width - 0.5, y: height - 0.5 }),
  sheetLine('left', 'frame', { x: 0.5, y: 0.5 }, { x: 0.5, y: height - 0.5 }),
  sheetLine('right', 'frame', { x: width - 0.5, y: 0.5 }, { x: width - 0.5, y: height - 0.5 }),
];
const tilesOf = (plan: SheetPart, unit: 'mm' | 'in' = 'mm') => {
  const pages = tilePages(plan, A4, unit);
  if (pages === null) throw new Error('Expected tiles.');
  return pages;
};
const titles = (pages: readonly (readonly Item[])[]) =>
  pages.map((items) => {
    const title = items.find(({ id }) => id === 'plan-page-title');
    return title?.kind === 'text' ? title.text : '';
  });
const boxOf = (items: readonly Item[] | undefined, id: string) => {
  const item = items?.find((each) => each.id === id);
  if (item === undefined) throw new Error(`There is no ${id}.`);
  return itemBox(item);
};

// 400 × 300 in tiles of 180 × 235 with 15 of overlap: steps of 165 and 220; (400 − 15) / 165 = 2.3, so 3 across, and
// (300 − 15) / 220 = 1.3, so 2 along.
describe('a part of 400 × 300 on A4', () => {
  const plan = part(400, 300, [
    ...frame(400, 300),
    sheetPath('hole', 'hole', circlePath({ x: 172.5, y: 100 }, 40)),
    sheetText('word', 'note', { x: 172.5, y: 150 }, 'over the join'),
    sheetText('middle', 'note', { x: 250, y: 40 }, 'in the middle', 'middle'),
  ]);
  const pages = tilesOf(plan);

  it('comes on six tiles, each named, with one of them crossed on the map', () => {
    expect(titles(pages)).toEqual(
      ['A1', 'B1', 'C1', 'A2', 'B2', 'C2'].map((name) => `Plan of the top, tile ${name} of 3 × 2`),
    );
    for (const items of pages) {
      expect(items.filter(({ id }) => /^plan-map-[A-C][12]$/.test(id))).toHaveLength(6);
      expect(items.filter(({ id }) => id.startsWith('plan-map-here'))).toHaveLength(2);
    }
  });

  it('shows each mark of a join on both of its tiles, at the place of the part', () => {
    // A1 shows the part from 0, B1 from 165: the middle of their overlap is 172.5 on A1 and 7.5 on B1, from x = 20.
    for (const mark of ['1', '2']) {
      const [one, other] = [pages[0], pages[1]].map((items) => boxOf(items, `join-A1-B1-${mark}-upright`));
      expect(one?.minX).toBeCloseTo(20 + 172.5, 9);
      expect(other?.minX).toBeCloseTo(20 + 7.5, 9);
      expect(one?.minY).toBeCloseTo(other?.minY ?? 0, 9);
    }
    // A2 shows it from 220: the overlap's middle is 227.5 on A1 and 7.5 on A2.
    const [one, other] = [pages[0], pages[3]].map((items) => boxOf(items, 'join-A1-A2-1-level'));
    expect(one?.minY).toBeCloseTo(TOP + 227.5, 9);
    expect(other?.minY).toBeCloseTo(TOP + 7.5, 9);
  });

  it('has ticks 100 mm apart over each join, 4 in when working in inches', () => {
    const apart = (all: typeof pages) =>
      165 + boxOf(all[1], 'join-A1-B1-after').minX - boxOf(all[0], 'join-A1-B1-before').minX;
    expect(apart(pages)).toBeCloseTo(100, 9);
    expect(apart(tilesOf(plan, 'in'))).toBeCloseTo(101.6, 9);
    const words = pages.flat().flatMap((item) => (item.kind === 'text' ? [item.text] : []));
    expect(words.filter((text) => text === 'across join A1–B1: 100.0 mm')).toHaveLength(1);
  });

  it('draws every line where the part has it, and all of it', () => {
    const covered = pages.slice(0, 3).map((items, column) => {
      const { minX, maxX, minY } = boxOf(items, 'top-1');
      expect(minY).toBeCloseTo(TOP + 0.5, 9);
      return [minX - 20 + 165 * column, maxX - 20 + 165 * column];
    });
    expect(covered).toEqual([
      [expect.closeTo(0.5, 9), expect.closeTo(180, 9)],
      [expect.closeTo(165, 9), expect.closeTo(345, 9)],
      [expect.closeTo(330, 9), expect.closeTo(399.5, 9)],
    ]);
  });

  it('has each word once, whole, on a tile', () => {
    for (const id of ['word', 'middle']) expect(pages.flat().filter((item) => item.id === id)).toHaveLength(1);
  });

  it('keeps within the printable area, and every id once a page', () => {
    for (const items of pages) {
      expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
      for (const item of items) {
        const { minX, minY, maxX, maxY } = itemBox(item);
        expect(Math.min(minX - 10, minY - 10, 200 - maxX, 267 - maxY), item.id).toBeGreaterThan(-1e-6);
      }
    }
  });
});

describe('tilePages', () => {
  it('drops tiles with nothing of the part on them, and their joins', () => {
    // Only along the top and down the left: C2 and B2 are blank.
    const [top, , left] = frame(400, 300);
    const pages = tilesOf(
      part(
        400,
        300,
        [top, left].filter((item) => item !== undefined),
      ),
    );
    expect(titles(pages).map((title) => /tile (..)/.exec(title)?.[1])).toEqual(['A1', 'B1', 'C1', 'A2']);
    const ids = pages.flat().map(({ id }) => id);
    expect(ids.some((id) => id.startsWith('join-B1-C1'))).toBe(true);
    expect(ids.some((id) => id.startsWith('join-B1-B2'))).toBe(false);
    expect(ids.some((id) => /^plan-map-[BC]2$/.test(id))).toBe(false);
  });

  it('never cuts a part that must stay whole, nor one whose words no tile holds', () => {
    expect(tilePages(part(400, 300, frame(400, 300), true), A4, 'mm')).toBeNull();
    const words = sheetText('long', 'note', { x: 5, y: 5 }, 'a word '.repeat(40));
    expect(tilePages(part(500, 300, [words]), A4, 'mm')).toBeNull();
    expect(tilePages(part(400, 300, frame(400, 300)), frameOf(90, 120), 'mm')).toBeNull();
  });
});
