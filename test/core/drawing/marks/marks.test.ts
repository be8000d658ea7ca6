import { describe, expect, it } from 'vitest';
import type { DesignCheck } from '../../../../src/core/checks/types';
import { drawCheckMarks } from '../../../../src/core/drawing/marks/drawCheckMarks';
import { drawRamps } from '../../../../src/core/drawing/marks/drawRamps';
import { drawTies } from '../../../../src/core/drawing/marks/drawTies';
import { pathBounds } from '../../../../src/core/geom/pathBounds';

const check = (verdict: DesignCheck['verdict']): DesignCheck => ({
  id: 'pins-slot',
  verdict,
  message: '',
  lengths: [],
  source: null,
  at: [
    { x: 10, y: 640 },
    { x: -10, y: 641 },
  ],
  part: 'check: pins clear the slot',
});

describe('marks of the checks', () => {
  it('ring every place of a check that is not good', () => {
    const items = drawCheckMarks([check('look')]);
    expect(items.map(({ part, role }) => [part, role])).toEqual(
      Array.from({ length: 2 }, () => ['check: pins clear the slot', 'mark']),
    );
    const [first] = items.flatMap((item) => (item.kind === 'path' ? [pathBounds(item.path)] : []));
    expect(((first?.minX ?? 0) + (first?.maxX ?? 0)) / 2).toBeCloseTo(10, 9);
    expect(new Set(items.map(({ id }) => id)).size).toBe(2);
  });

  it('leave out what is good', () => expect(drawCheckMarks([check('good')])).toEqual([]));
});

const hole = { id: 'tie-1', label: 'string hole 1', mouth: { x: 5, y: 640 }, back: { x: 5, y: 652 }, diameter: 2 };

describe('string holes', () => {
  it('are hidden lines from mouth to back edge, with a centreline in a tie block', () => {
    const items = drawTies([hole], false);
    expect(items.map(({ role }) => role)).toEqual(['beneath', 'beneath', 'centreline']);
    const boxes = items.flatMap((item) => (item.kind === 'path' ? [pathBounds(item.path)] : []));
    expect(boxes.map(({ minX, minY, maxY }) => [minX, minY, maxY])).toEqual([
      [4, 640, 652],
      [6, 640, 652],
      [5, 640, 652],
    ]);
  });

  it('open in the upper face where the back edge holds the strings', () => {
    expect(drawTies([hole], true).map(({ role }) => role)).toEqual(['beneath', 'beneath', 'hole']);
  });

  it('are not drawn where they miss the bridge', () => {
    expect(drawTies([{ ...hole, back: hole.mouth }], true)).toEqual([]);
  });
});

it('a ramp is a mark that belongs to its pin', () => {
  const pin = { id: 'pin-3', label: 'pin 3', centre: { x: 0, y: 650 }, diameter: 5 };
  const [item] = drawRamps([
    {
      pin,
      corners: [
        { x: 1, y: 648 },
        { x: -1, y: 648 },
      ],
      tip: { x: 0, y: 643 },
    },
  ]);
  expect(item).toMatchObject({ id: 'pin-3-ramp', part: 'pin 3', layer: 'pins' });
});
