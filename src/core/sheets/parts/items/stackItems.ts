import { moveItem } from '../../../drawing/moveItem';
import type { Item } from '../../../drawing/types';
import { boundsOfItems } from './partOfItems';

/** Drawings and tables one beneath the other, their left edges in line, a gap in mm between. Empty ones are left out. */
export const stackItems = (blocks: readonly (readonly Item[])[], gap = 4): readonly Item[] => {
  let y = 0;
  return blocks.flatMap((items) => {
    if (items.length === 0) return [];
    const { minX, minY, maxY } = boundsOfItems(items);
    const by = { x: 0 - minX, y: y - minY };
    y += maxY - minY + gap;
    return items.map((item) => moveItem(item, by));
  });
};
