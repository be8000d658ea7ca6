import type { Item, TextItem } from '../../core/drawing/types';
import { pathBounds } from '../../core/geom/pathBounds';
import type { Bounds } from '../../core/geom/types';
import { textPixels } from '../itemLook';

/** More than half of the widest line with the edge that blends into its ground, screen pixels. */
export const LINE_MARGIN = 4;

/** The square that a text stays within, however it is turned: no letter is wider than its font is high. */
const textBox = ({ at, text, height }: TextItem, zoom: number): Bounds => {
  const reach = ((text.length + 1) * textPixels(height, zoom)) / zoom;
  return { minX: at.x - reach, minY: at.y - reach, maxX: at.x + reach, maxY: at.y + reach };
};

/** What an item's points stay within, mm; its line reaches LINE_MARGIN pixels farther. */
export const itemBox = (item: Item, zoom: number): Bounds =>
  item.kind === 'path' ? pathBounds(item.path) : textBox(item, zoom);
