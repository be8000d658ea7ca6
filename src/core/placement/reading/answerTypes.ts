import type { Freedom, Pose, PoseFit } from '../poseTypes';
import type { MoveStep } from './moveSteps';
import type { ReadLine } from './types';

/**
 * good: within its tolerance, and known at least as well as that. off: beyond it for sure. unsure: the readings cannot tell.
 * For sure: in 19 cases of 20.
 */
export type FreedomVerdict = 'good' | 'off' | 'unsure' | 'unseen';

/** A freedom of the bridge: how far off it sits, mm or radians, + toward the treble, toward the tail, and carrying the treble wing toward the tail. */
export interface FreedomAnswer {
  readonly freedom: Freedom;
  readonly off: number;
  readonly sigma: number;
  readonly tolerance: number;
  readonly verdict: FreedomVerdict;
}

/** What the place costs a string if it is left. sigma is Infinity where the readings do not tell. */
export interface StringLeft {
  readonly id: string;
  readonly name: string;
  /** How far the string breaks behind its place, mm, + toward the tail. */
  readonly off: number;
  readonly sigma: number;
  /** What that does at the 12th fret: + sharp. */
  readonly cents: number;
  readonly centsSigma: number;
}

/** Edge to the outside of an outer string at the last fret, mm. */
export interface MarginLeft {
  readonly side: 'treble' | 'bass';
  readonly now: number;
  readonly meant: number;
  readonly sigma: number;
}

export interface PlaceAnswer {
  readonly fit: PoseFit;
  readonly nominal: Pose;
  readonly freedoms: readonly FreedomAnswer[];
  readonly verdict: FreedomVerdict;
  readonly steps: readonly MoveStep[];
  readonly strings: readonly StringLeft[];
  readonly margins: readonly MarginLeft[];
  /** What of each reading the rest do not explain, mm: + when it reads more. */
  readonly residuals: readonly { readonly id: string; readonly line: string; readonly residual: number }[];
  /**
   * Ids of readings of which one does not go with the rest, and by how many times its own spread; none where all go
   * together. together: no one stands out, and yet they fit worse than their tools allow.
   */
  readonly quarrel: { readonly ids: readonly string[]; readonly times: number; readonly together: boolean };
  /** What to read next, to know more; null when nothing would help. */
  readonly next: ReadLine | null;
  /** Only distances across from corner to corner were compared: that proves nothing alone. */
  readonly crossesAlone: boolean;
}
