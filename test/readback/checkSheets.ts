import { expect } from 'vitest';
import { LONG_LINES } from '../reference/longLines';
import { type ALL_SHEETS, forHand, POINTS } from './allSheets';
import { congruentOn } from './congruent';
import { type LinesOfPage, marksOf } from './deviations';

export interface SizedPage extends LinesOfPage {
  readonly width: number;
  readonly height: number;
}

/** How far off the worst end of a page's long lines is, mm; infinitely far on a page of an unknown size. */
const longLinesOff = ({ width, height, paths }: SizedPage): number => {
  const ends = LONG_LINES[`${width.toFixed(1)} × ${height.toFixed(1)}`];
  const marks = paths.flatMap(marksOf);
  if (ends === undefined) return Number.POSITIVE_INFINITY;
  return Math.max(...ends.map(([x, y]) => Math.min(...marks.map((mark) => Math.hypot(mark.x - x, mark.y - y)))));
};

/** Holds every page's long lines and every drawing's named points against the tables; answers with the worst, mm. */
export const checkSheets = (
  pages: readonly SizedPage[],
  { id, hand }: Pick<(typeof ALL_SHEETS)[number], 'id' | 'hand'>,
  most: number,
): number => {
  const lines = pages.map(longLinesOff);
  expect(lines.filter((by) => !(by <= most))).toEqual([]);
  const found = Object.entries(POINTS[id] ?? {}).map(([name, points]) => ({
    name,
    by: congruentOn(pages, forHand(name, points, hand)),
  }));
  expect(found.filter(({ by }) => !(by !== null && by <= most))).toEqual([]);
  expect(found).toHaveLength(13);
  return Math.max(...lines, ...found.map(({ by }) => by ?? Number.POSITIVE_INFINITY));
};
