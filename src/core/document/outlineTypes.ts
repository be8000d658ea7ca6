import type { Path } from '../geom/types';

export type ShapeName =
  | 'rectangular'
  | 'belly'
  | 'belly-nut'
  | 'pyramid-tip'
  | 'tie-block'
  | 'small-ukulele'
  | 'double-sided';

/** An outline by the dimensions of a shape. */
export interface ShapedOutline {
  readonly kind?: never;
  readonly shape: ShapeName;
  readonly parameters: Readonly<Record<string, number>>;
}

/** An outline drawn freely or taken from a file, footprint frame. symmetric: about the centreline, and edits keep it so. */
export interface DrawnOutline {
  readonly kind: 'drawn';
  readonly path: Path;
  readonly symmetric: boolean;
}

export type Outline = ShapedOutline | DrawnOutline;
