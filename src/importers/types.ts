import type { Path } from '../core/geom/types';

/** How large one unit of a file is, as far as the file says so. */
export type FileSize =
  /** words: where this comes from. */
  | { readonly known: true; readonly perUnit: number; readonly words: string }
  /** pixels: an SVG told in pixels or bare numbers. nothing: a file that fits any size. unit: a DXF without a unit. */
  | { readonly known: false; readonly asks: 'dpi' | 'size' | 'unit'; readonly words: string };

/** The paths of a file in its own units, y + down the page as the drawing is seen. */
export interface Drawing {
  readonly kind: 'svg' | 'dxf';
  readonly pieces: readonly Path[];
  readonly size: FileSize;
  /** What was not read, in words. */
  readonly leftOut: readonly string[];
}
