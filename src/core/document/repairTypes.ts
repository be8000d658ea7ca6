import type { Outline } from './outlineTypes';

/** What the places of old holes and of an old slot are read from. */
export type FormerDatum = 'front' | 'nut';

/** The old footprint: its outline, and where its own front edge lies on this instrument. */
export interface FormerFootprint {
  readonly outline: Outline;
  /** Nut datum to where the front edge crosses the old bridge's own middle. */
  readonly front: number;
  /** Its middle against the centreline: + toward the treble side. */
  readonly aside: number;
  /** Radians: + when its bass end lies farther back. */
  readonly turn: number;
}

/** Old pin holes in one even row, string 1 first. */
export interface FormerRow {
  readonly kind: 'row';
  readonly count: number;
  /** First to last centre, along the row. */
  readonly spread: number;
  /** From the datum to the row, in its middle. */
  readonly distance: number;
  /** Its middle: + toward the treble side. */
  readonly aside: number;
  /** Radians: + when the bass end lies farther back. */
  readonly slant: number;
  /** Every second hole stands this far behind the first row; 0 for one row. */
  readonly stagger: number;
  readonly diameter: number;
}

export interface FormerHole {
  readonly id: string;
  /** + toward the treble side. */
  readonly x: number;
  /** Behind the datum. */
  readonly y: number;
  readonly diameter: number;
}

/** Old pin holes, each by its own place. */
export interface FormerEach {
  readonly kind: 'each';
  readonly each: readonly FormerHole[];
}

/** Read from the old front edge, turned and shifted with it, or from the nut datum and the centreline. */
export type FormerHoles = { readonly from: FormerDatum } & (FormerRow | FormerEach);

/** The slot that is filled when the bridge stays and is slotted anew. */
export interface FormerSlot {
  readonly from: FormerDatum;
  /** From the datum to its front wall, at its middle. */
  readonly distance: number;
  /** Its middle: + toward the treble side. */
  readonly aside: number;
  /** Radians: + when the bass end lies farther back. */
  readonly slant: number;
  /** Over all, ends included. */
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly ends: 'round' | 'square';
}

/** The bridge that was there before. */
export interface Repair {
  readonly footprint: FormerFootprint;
  /** Null while nothing was said of them. */
  readonly holes: FormerHoles | null;
  /** Null unless the slot of a bridge that stays is filled. */
  readonly slot: FormerSlot | null;
}
