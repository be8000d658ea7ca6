/** mm of paper for each mm of the instrument, across the saddle and along the neck. */
export interface CompensationScale {
  readonly across: 1 | 2;
  readonly along: 1 | 2 | 5 | 10;
}

/** Paper between neighbouring strings' marks at the least, mm. */
const LEAST_GAP = 6;
/** Paper that the range of compensation may take, mm. */
const MOST_HEIGHT = 60;

/** The scale that keeps the marks apart and the range within its room. xs: places of the strings; range: mm. */
export const compensationScale = (xs: readonly number[], range: number): CompensationScale => {
  const sorted = [...xs].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((x, index) => x - (sorted[index] ?? x));
  const along = ([10, 5, 2] as const).find((scale) => range * scale <= MOST_HEIGHT) ?? 1;
  return { across: Math.min(...gaps) < LEAST_GAP ? 2 : 1, along };
};
