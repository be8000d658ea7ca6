import { moveItem } from '../drawing/moveItem';
import type { Item } from '../drawing/types';
import type { Frame } from './frame';
import type { SheetPart } from './parts/types';
import { sheetText } from './sheetItems';

/** From the top of the frame: two lines that say what the page is of. */
const PAGE_HEAD = 10;
/** A part's name over it, and white between parts, mm. */
const NAME_HEIGHT = 7;
const GAP = 6;

interface Laid {
  readonly page: number;
  readonly items: readonly Item[];
}

const named = (part: SheetPart, x: number, y: number): readonly Item[] => [
  sheetText(`${part.id}-page-title`, 'key', { x, y: y + 2.6 }, part.name),
  ...part.items.map((item) => moveItem(item, { x, y: y + NAME_HEIGHT })),
];

/** Whether a page of this frame cannot hold the part whole. */
export const tooLarge = ({ width, height }: SheetPart, frame: Frame): boolean =>
  width > frame.right - frame.left || height + NAME_HEIGHT > frame.bottom - frame.top - PAGE_HEAD;

/**
 * Parts on pages of one frame, in their order: side by side while they fit, in rows, then on the next page. Every part lies
 * whole on its page, so each must fit: see `tooLarge`. Answers with the items of each page.
 */
export const layParts = (parts: readonly SheetPart[], frame: Frame): readonly (readonly Item[])[] => {
  const top = frame.top + PAGE_HEAD;
  let [page, x, y, row] = [0, frame.left, top, 0];
  const laid = parts.map((part): Laid => {
    const height = part.height + NAME_HEIGHT;
    if (x > frame.left && x + part.width > frame.right) [x, y, row] = [frame.left, y + row + GAP, 0];
    if (y + height > frame.bottom) [page, x, y, row] = [page + 1, frame.left, top, 0];
    const items = named(part, x, y);
    x += part.width + GAP;
    row = Math.max(row, height);
    return { page, items };
  });
  if (laid.length === 0) return [];
  return Array.from({ length: page + 1 }, (_, index) =>
    laid.filter((each) => each.page === index).flatMap(({ items }) => items),
  );
};
