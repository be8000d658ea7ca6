import type { SoleGaps } from '../../document/soleTypes';
import type { Point } from '../../geom/types';
import type { SolePlaces } from './topShape';

/** A named point of the sole. Lengths in mm. */
export interface SolePoint {
  readonly name: keyof SoleGaps;
  /** From the centreline, + toward the treble. */
  readonly x: number;
  /** Between sole and top with the bridge resting, pressed at its centre. */
  readonly gap: number;
  /** Sole to upper face. */
  readonly thickness: number;
  /** To be taken off the sole here, so that it lies on the top all over with the least sanding. */
  readonly fit: number;
}

/** How a bridge rests on the top: all over, on one place about which it rocks, or on two places with a gap between. */
export type Resting = 'all-over' | 'rocks' | 'two-places';

/** How the sole lies on the top. Lengths in mm. */
export interface SoleFit {
  readonly places: SolePlaces;
  /** From the bass tip to the treble tip. */
  readonly points: readonly SolePoint[];
  /** Gap along the length, x from the bass to the treble, on the middle of the width. */
  readonly curve: readonly Point[];
  /** Gap on the centreline under the front edge, and the same under the back edge. */
  readonly edges: number;
  readonly rests: Resting;
  /** The places it rests on, x. */
  readonly from: number;
  readonly to: number;
  /** Largest gap under the wings, under the rest of the sole with its edges, and of the two, with where along the length. */
  readonly wingGap: number;
  readonly centreGap: number;
  readonly worst: { readonly gap: number; readonly x: number };
  /** What the bridge is once it is sanded: all over, and to fit. */
  readonly after: {
    readonly thickness: number;
    readonly woodUnder: number;
    /** Lost from the footprint by its sloped sides: from its length, and from its width at the centreline. */
    readonly lengthLoss: number;
    readonly widthLoss: number;
  };
}
