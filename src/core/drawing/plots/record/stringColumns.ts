/** Paper from one string's column to the next, mm. */
export const COLUMN = 13;

/** Where each string's column stands about the middle, mm of paper, right hand: string 1 at the right. */
export const stringColumns = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => ((count - 1) / 2 - index) * COLUMN);

/** Narrower than this a plot has no room for its words, mm of paper. */
const NARROWEST = 64;

/** Paper from one side of the strings' columns to the other, mm. */
export const columnsSpan = (count: number): number => Math.max(count * COLUMN, NARROWEST);
