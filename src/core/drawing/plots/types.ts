import type { Item } from '../types';

/** A plot as a display list of its own: mm, x to the right, y down, all of it between 0 and its width and height. */
export interface PlotPicture {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** What it shows, for a heading; not among the items. */
  readonly title: string;
  /** What it says, in one or two sentences, for those who do not see it. */
  readonly summary: string;
}

/** Errors by string and fret, cents, + sharp: one row a string, one column a fret. */
export interface CentsByFret {
  readonly strings: readonly string[];
  readonly frets: readonly number[];
  readonly cents: readonly (readonly number[])[];
}
