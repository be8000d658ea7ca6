import type { Point } from '../geom/types';

/**
 * A place to measure from or to: a feature of a part ("pin 3", its centre), which is found anew when the part moves, or a
 * fixed point of the footprint frame.
 */
export type Anchor =
  | { readonly kind: 'part'; readonly part: string; readonly feature: string }
  | { readonly kind: 'point'; readonly at: Point };

/** Which way a distance is told: in a straight line, across the centreline, or along it. */
export type MeasuredWay = 'straight' | 'across' | 'along';

/** A distance between two places. */
export interface PinnedDistance {
  readonly kind: 'distance';
  readonly id: string;
  readonly way: MeasuredWay;
  readonly from: Anchor;
  readonly to: Anchor;
}

/** The angle at `corner` between two other places. */
export interface PinnedAngle {
  readonly kind: 'angle';
  readonly id: string;
  readonly from: Anchor;
  readonly corner: Anchor;
  readonly to: Anchor;
}

/** The least distance between the edges of two parts. */
export interface PinnedGap {
  readonly kind: 'gap';
  readonly id: string;
  readonly from: string;
  readonly to: string;
}

/** A dimension that the maker pinned to the drawing. */
export type PinnedDimension = PinnedDistance | PinnedAngle | PinnedGap;
