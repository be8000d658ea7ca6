import type { Bounds, Point } from '../../core/geom/types';

/** Words that stand beside a place, each line under the one before. */
export interface Words {
  readonly at: Point;
  readonly lines: readonly string[];
}

export const WORDS_FONT = '14px "DejaVu Sans Condensed", sans-serif';
/** Words stand so far from the place that they speak of, pixels. */
const BESIDE = { x: 16, y: -14 };
const LINE = 19;
/** Of the ground that they stand on, beyond them. */
const ROOM = 4;

/** A line of words where it stands. */
export interface LaidLine {
  readonly text: string;
  /** Of the writing, at its left end. */
  readonly at: Point;
  /** The ground that it stands on. */
  readonly ground: Bounds;
}

/** Where words stand in a view so wide: on the side that has more room. measure: how long a text is, pixels. */
export const layWords = (words: Words, width: number, measure: (text: string) => number): readonly LaidLine[] => {
  const { x, y } = words.at;
  const left = x > width / 2;
  const top = Math.max(LINE, y + BESIDE.y - LINE * (words.lines.length - 1));
  return words.lines.map((text, index) => {
    const long = measure(text);
    const from = left ? x - BESIDE.x - long : x + BESIDE.x;
    const base = top + index * LINE;
    const ground = { minX: from - ROOM, minY: base + 5 - LINE, maxX: from + long + ROOM, maxY: base + 5 };
    return { text, at: { x: from, y: base }, ground };
  });
};
