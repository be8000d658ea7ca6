import type { Item } from '../drawing/types';

/** A paper as it lies in the printer, upright, mm. */
export interface Paper {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** White at every edge, mm, where it is not the usual one. */
  readonly margin?: number;
}

/** One page: its size as it is read (landscape pages are wider than tall) and its items in page mm, y down from the top left. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
}

/** A set of pages of one size, ready for an exporter. */
export interface SheetDocument {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  /** ISO date, the day that the sheet was made. */
  readonly date: string;
  /** Names the project and its revision, so that the same drawing makes the same bytes. */
  readonly fileKey: string;
  readonly pages: readonly Page[];
}
