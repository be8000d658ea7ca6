import type { Point } from '../types';

/** A straight line that a moving point may come to lie on: x = value, y = value, or through a point in a direction. */
export type SnapLine =
  | { readonly kind: 'x'; readonly value: number; readonly reason: string }
  | { readonly kind: 'y'; readonly value: number; readonly reason: string }
  | { readonly kind: 'line'; readonly through: Point; readonly direction: Point; readonly reason: string };

/** Where a moving point came to lie. */
export interface Snapped {
  readonly at: Point;
  /** Why it lies there, in words, the nearer line first; none when nothing was near. */
  readonly reasons: readonly string[];
  /** The lines that hold it, to be shown. */
  readonly lines: readonly SnapLine[];
}
