import type { Item } from '../../../drawing/types';
import { noteLines } from './noteLines';
import { boundsOfItems } from './partOfItems';

/** Notes are at least this wide, mm. */
const NARROWEST = 150;
/** And at most: lines that an upright A4 page holds, where the drawing is cut over several, mm. */
const WIDEST = 174;
/** From the drawing to the middle of the first line, mm. */
const TO_NOTES = 4;

/** A drawing with its notes beneath, about as wide as it is. */
export const withNotes = (items: readonly Item[], heading: string, notes: readonly string[]): readonly Item[] => {
  const { minX, maxX, maxY } = boundsOfItems(items);
  const width = Math.min(WIDEST, Math.max(NARROWEST, maxX - minX));
  return [...items, ...noteLines({ x: (minX + maxX - width) / 2, y: maxY + TO_NOTES }, width, heading, notes)];
};
