import { moveItem } from '../moveItem';
import { plotCaption } from '../plots/plotCaption';
import type { PlotPicture } from '../plots/types';
import { itemBounds } from '../shapePreview/itemBounds';
import type { Item } from '../types';

const EDGE = 2;
const TO_CAPTION = 5;

/** A drawing at true size laid in a picture that just holds it, with a sentence beneath. */
export const sidePicture = (
  items: readonly Item[],
  words: { readonly title: string; readonly summary: string; readonly caption: string },
): PlotPicture => {
  const bounds = items.map(itemBounds);
  const minX = Math.min(...bounds.map((each) => each.minX));
  const minY = Math.min(...bounds.map((each) => each.minY));
  const width = Math.max(...bounds.map((each) => each.maxX)) - minX + 2 * EDGE;
  const depth = Math.max(...bounds.map((each) => each.maxY)) - minY + EDGE;
  const caption = plotCaption(words.caption, { x: EDGE, y: depth + TO_CAPTION }, width - 2 * EDGE);
  return {
    width,
    height: depth + TO_CAPTION + caption.height,
    items: [...items.map((item) => moveItem(item, { x: EDGE - minX, y: EDGE - minY })), ...caption.items],
    title: words.title,
    summary: words.summary,
  };
};
