import { expect } from 'vitest';
import { isBold, LINE_STYLES } from '../../../../src/core/drawing/lineStyles';
import type { PlotPicture } from '../../../../src/core/drawing/plots/types';
import type { Item, PathItem, TextItem } from '../../../../src/core/drawing/types';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import type { Bounds } from '../../../../src/core/geom/types';
import { CAPITAL_HEIGHT } from '../../../../src/core/text/capitalHeight';
import { measureText } from '../../../../src/core/text/measureText';

const BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

const boundsOf = (item: Item): Bounds => {
  if (item.kind === 'path') return pathBounds(item.path);
  const wide = measureText(item.text, item.height, isBold(item.role) ? 'bold' : 'regular');
  const minX = item.at.x - BEFORE[item.anchor] * wide;
  const half = (CAPITAL_HEIGHT / 2) * item.height;
  return { minX, maxX: minX + wide, minY: item.at.y - half, maxY: item.at.y + half };
};

export const pathOf = ({ items }: PlotPicture, id: string): PathItem => {
  const item = items.find((each) => each.id === id);
  if (item?.kind !== 'path') throw new Error(`No path ${id}.`);
  return item;
};

export const textOf = ({ items }: PlotPicture, id: string): TextItem => {
  const item = items.find((each) => each.id === id);
  if (item?.kind !== 'text') throw new Error(`No text ${id}.`);
  return item;
};

/** Middle of what a path covers. */
export const middleOf = (picture: PlotPicture, id: string) => {
  const { minX, maxX, minY, maxY } = pathBounds(pathOf(picture, id).path);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
};

/** What every plot keeps: the project's own rules for print (2.9 mm, 0.18 mm), and nothing cut off or laid over words. */
export const expectSoundPicture = (picture: PlotPicture): void => {
  const { items, width, height } = picture;
  expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
  for (const item of items) {
    const { minX, maxX, minY, maxY } = boundsOf(item);
    expect(Math.min(minX, minY, width - maxX, height - maxY), item.id).toBeGreaterThanOrEqual(0);
    if (item.kind === 'text') {
      expect(item.height, item.id).toBeGreaterThanOrEqual(2.9);
      expect(item.angle, item.id).toBe(0);
    } else expect(LINE_STYLES[item.role].width, item.id).toBeGreaterThanOrEqual(0.18);
  }
  const words = items.filter(({ kind }) => kind === 'text').map((item) => ({ id: item.id, ...boundsOf(item) }));
  for (const [index, a] of words.entries())
    for (const b of words.slice(index + 1))
      expect(a.maxX <= b.minX || b.maxX <= a.minX || a.maxY <= b.minY || b.maxY <= a.minY, `${a.id} over ${b.id}`).toBe(
        true,
      );
};
