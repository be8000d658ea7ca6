import type { Point } from '../../geom/types';
import { measureText } from '../../text/measureText';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item } from '../types';
import { plotText } from './plotItems';

/** A sign of a plot and what it means. sample: the sign itself, drawn about its middle. */
export interface KeyEntry {
  readonly id: string;
  readonly text: string;
  readonly sample: (middle: Point) => readonly Item[];
}

/** Room for a sign, to its words, and between two entries, mm. */
export const SAMPLE_WIDTH = 8;
const TO_WORDS = 1.2;
const BETWEEN = 4;
const ROW = 5;

/** The entries of a key in rows no wider than `width`, from a point down; y of its first row's middle is that point's. */
export const plotKey = (
  entries: readonly KeyEntry[],
  from: Point,
  width: number,
): { readonly items: readonly Item[]; readonly height: number } => {
  let x = from.x;
  let row = 0;
  const items = entries.flatMap(({ id, text, sample }): readonly Item[] => {
    const wide = SAMPLE_WIDTH + TO_WORDS + measureText(text, TEXT_HEIGHT.note, 'regular');
    if (x > from.x && x + wide > from.x + width) {
      x = from.x;
      row += 1;
    }
    const y = from.y + row * ROW;
    const start = x;
    x += wide + BETWEEN;
    return [
      ...sample({ x: start + SAMPLE_WIDTH / 2, y }),
      plotText(`key-${id}`, 'key', 'note', { x: start + SAMPLE_WIDTH + TO_WORDS, y }, text, 'start'),
    ];
  });
  return { items, height: (row + 1) * ROW };
};
