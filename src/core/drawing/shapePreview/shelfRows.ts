import { DIMENSION } from '../dimensions/measures';
import { wordsWidth } from '../dimensions/pieces';
import type { ShelfSide } from '../dimensions/types';
import { PICTURE } from './pictureLayout';

/** Words that want a shelf: where the line comes down to it, and the side on which they stand. */
export interface Shelved {
  readonly text: string;
  readonly x: number;
  readonly side: ShelfSide;
}

const extent = ({ text, x, side }: Shelved): { readonly from: number; readonly to: number } => {
  const width = wordsWidth(text) + DIMENSION.shelfPad;
  return side === 'right' ? { from: x, to: x + width } : { from: x - width, to: x };
};

/**
 * The row of each shelf, 0 nearest to the bridge: no words over others, and no line down to a shelf through the words of
 * another. Each takes the first row that does so, in the order given; inner lines first.
 */
export const shelfRows = (shelves: readonly Shelved[]): readonly number[] => {
  const rows: number[] = [];
  const fits = (shelf: Shelved, row: number): boolean =>
    rows.every((otherRow, index) => {
      const other = shelves[index];
      if (other === undefined) return true;
      const [mine, theirs] = [extent(shelf), extent(other)];
      const gap = PICTURE.between;
      const covers = ({ from, to }: { from: number; to: number }, x: number) => from - gap < x && x < to + gap;
      if (row === otherRow) return mine.to + gap <= theirs.from || theirs.to + gap <= mine.from;
      return row > otherRow ? !covers(theirs, shelf.x) : !covers(mine, other.x);
    });
  for (const shelf of shelves) {
    let row = 0;
    while (!fits(shelf, row) && row < shelves.length) row += 1;
    rows.push(row);
  }
  return rows;
};
