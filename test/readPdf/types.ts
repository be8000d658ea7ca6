import type { Path, Point } from '../../src/core/geom/types';

/** A line of a page as a reader found it: mm from the top left of the page, y down; lines and cubics only. */
export interface ReadPath extends Path {
  /** The start and the end of each segment, in order. */
  readonly points: readonly Point[];
  readonly stroked: boolean;
  readonly filled: boolean;
  /** Width of the stroke, mm. */
  readonly width: number;
  /** Lengths of dash and gap, mm; [] continuous. */
  readonly dash: readonly number[];
}

/** A run of text as a reader found it. */
export interface ReadText {
  readonly text: string;
  /** Left end of the baseline, mm from the top left of the page, y down. */
  readonly start: Point;
  /** Font size, mm. */
  readonly height: number;
  /** Radians, + clockwise as seen. */
  readonly angle: number;
  /** Length along the baseline, mm; null where the reader does not tell. */
  readonly width: number | null;
}

/** A page as a reader found it; sides in mm, turn in degrees. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly rotation: number;
  readonly paths: readonly ReadPath[];
  readonly texts: readonly ReadText[];
}
