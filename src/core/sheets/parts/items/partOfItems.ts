import { moveItem } from '../../../drawing/moveItem';
import { itemBounds } from '../../../drawing/shapePreview/itemBounds';
import type { Item } from '../../../drawing/types';
import { aroundAll } from '../../../geom/aroundAll';
import { add, rotate } from '../../../geom/points';
import type { Bounds } from '../../../geom/types';
import type { SheetPart } from '../types';

/** Room for the weight of the lines at the edges, mm. */
const EDGE = 0.5;

/** The room that an item takes, words that run along the neck too. */
const boundsOf = (item: Item): Bounds => {
  if (item.kind === 'path' || item.angle === 0) return itemBounds(item);
  const { minX, maxX, minY, maxY } = itemBounds({ ...item, at: { x: 0, y: 0 } });
  const corners = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: minX, y: maxY },
    { x: maxX, y: maxY },
  ].map((corner) => add(item.at, rotate(corner, item.angle)));
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
};

/** The room that items take together. */
export const boundsOfItems = (items: readonly Item[]): Bounds => aroundAll(items.map(boundsOf));

/**
 * Items that lie anywhere, at least one, as one drawing of a sheet; ids begin with its own. whole: never cut over two pages;
 * where it may be, no words are wider than a page.
 */
export const partOfItems = (id: string, name: string, items: readonly Item[], whole = true): SheetPart => {
  const { minX, maxX, minY, maxY } = boundsOfItems(items);
  const by = { x: EDGE - minX, y: EDGE - minY };
  return {
    id,
    name,
    width: maxX - minX + 2 * EDGE,
    height: maxY - minY + 2 * EDGE,
    items: items.map((item) => ({ ...moveItem(item, by), id: `${id}-${item.id}` })),
    whole,
  };
};
