import { describe, expect, it } from 'vitest';
import { changedItems } from '../../../src/canvas/repaint/changedItems';
import type { Item, PathItem, TextItem } from '../../../src/core/drawing/types';
import type { Path, Point } from '../../../src/core/geom/types';

const through = (...[start, ...others]: readonly [Point, ...Point[]]): Path => ({
  start,
  segments: others.map((to) => ({ kind: 'line', to })),
  closed: true,
});
const at = (x: number, y: number): Point => ({ x, y });
const SQUARE = through(at(0, 0), at(100, 0), at(100, 100), at(0, 100), at(0, 0));
const outline = (path: Path, role: PathItem['role'] = 'outline'): PathItem => ({
  kind: 'path',
  id: 'footprint',
  part: 'footprint',
  role,
  layer: 'bridge',
  path,
});
const WORD: TextItem = {
  kind: 'text',
  id: 'word',
  part: 'word',
  role: 'label',
  layer: 'text',
  at: at(200, 50),
  text: 'BASS',
  height: 3,
  anchor: 'middle',
  angle: 0,
};
const copy = <Value>(value: Value): Value => structuredClone(value);
const boxesOf = (before: readonly Item[], after: readonly Item[]) => changedItems(before, after, 4)?.boxes;

describe('changedItems', () => {
  it('finds nothing in a copy, and keeps what was there', () => {
    const before = [outline(SQUARE), WORD];
    const found = changedItems(before, copy(before), 4);
    expect(found?.boxes).toEqual([]);
    expect(found?.items[0]).toBe(before[0]);
    expect(found?.items[1]).toBe(WORD);
  });

  it('finds the two sides at a corner that moved; by hand', () => {
    const moved = through(at(0, 0), at(100, 0), at(110, 120), at(0, 100), at(0, 0));
    // From (100, 0) by (100, 100) or (110, 120) to (0, 100).
    expect(boxesOf([outline(SQUARE)], [outline(moved)])).toEqual([{ minX: 0, minY: 0, maxX: 110, maxY: 120 }]);
    const short = through(at(0, 0), at(100, 0), at(100, 100), at(40, 100), at(0, 100), at(0, 0));
    const dented = through(at(0, 0), at(100, 0), at(100, 100), at(40, 90), at(0, 100), at(0, 0));
    expect(boxesOf([outline(short)], [outline(dented)])).toEqual([{ minX: 0, minY: 90, maxX: 100, maxY: 100 }]);
  });

  it('takes in the first corner of a path that does not come back by itself', () => {
    const open = through(at(0, 0), at(100, 0), at(100, 100));
    const moved = through(at(-5, -7), at(100, 0), at(100, 100));
    // The closing line runs from (100, 100) to the start.
    expect(boxesOf([outline(open)], [outline(moved)])).toEqual([{ minX: -5, minY: -7, maxX: 100, maxY: 100 }]);
  });

  it('takes in how far an arc bulges; a half circle of radius 50', () => {
    const half = (clockwise: boolean): Path => ({
      start: at(0, 0),
      segments: [{ kind: 'arc', to: at(0, 100), centre: at(0, 50), clockwise }],
      closed: true,
    });
    const [box] = boxesOf([outline(half(true))], [outline(half(false))]) ?? [];
    expect(box?.minX).toBeCloseTo(-50, 9);
    expect(box?.maxX).toBeCloseTo(50, 9);
  });

  it('takes a dashed line for changed from the first difference on, since dashes are counted from its start', () => {
    const changed = (one: Path, other: Path) => boxesOf([outline(one, 'finish-line')], [outline(other, 'finish-line')]);
    // The last side runs from (0, 100) to the start: from (100, 100) on all may look different.
    const late = through(at(0, 0), at(100, 0), at(100, 100), at(10, 120), at(0, 0));
    expect(changed(SQUARE, late)).toEqual([{ minX: 0, minY: 0, maxX: 100, maxY: 120 }]);
    const dent = through(at(0, 0), at(100, 0), at(100, 100), at(60, 100), at(50, 100), at(0, 0));
    const deeper = through(at(0, 0), at(100, 0), at(100, 100), at(60, 100), at(50, 90), at(40, 95), at(0, 0));
    expect(changed(dent, deeper)).toEqual([{ minX: 0, minY: 0, maxX: 60, maxY: 100 }]);
    const elsewhere = through(at(100, 0), at(100, 100), at(0, 100), at(0, 0), at(100, 0));
    expect(changed(SQUARE, elsewhere)).toEqual([
      { minX: 0, minY: 0, maxX: 100, maxY: 100 },
      { minX: 0, minY: 0, maxX: 100, maxY: 100 },
    ]);
  });

  it('takes in a text before and after, wherever it reaches', () => {
    const boxes = boxesOf([WORD], [{ ...WORD, text: 'TREBLE' }]) ?? [];
    expect(boxes).toHaveLength(2);
    // Six letters, each at most as wide as the font is high: 3 mm, half of them to either side.
    for (const { minX, maxX } of boxes.slice(1)) expect([minX <= 191, maxX >= 209]).toEqual([true, true]);
  });

  it('cannot tell when the items are not the same ones', () => {
    expect(changedItems([outline(SQUARE)], [WORD], 4)).toBeNull();
    expect(changedItems([outline(SQUARE), WORD], [WORD, outline(SQUARE)], 4)).toBeNull();
    expect(changedItems([outline(SQUARE)], [outline(SQUARE), WORD], 4)).toBeNull();
  });
});
