import type { Hole } from '../bridge/types';
import type { Path, Point } from '../geom/types';
import type { RigidFit } from '../placement/rigid/fitRigid';
import type { Result } from '../result';

/** The slot to be filled, instrument frame. */
export interface FormerSlotPlace {
  readonly outline: Path;
  /** A point of its front wall, in its middle, and where the walls lead: radians, + carries +x toward +y. */
  readonly front: Point;
  readonly angle: number;
  readonly width: number;
}

/** The bridge that was there, instrument frame. */
export interface FormerPlace {
  readonly outline: Path;
  readonly holes: readonly Hole[];
  readonly slot: FormerSlotPlace | null;
}

/** A new pin hole and the old hole that it would use. */
export interface HolePair {
  readonly pin: Hole;
  readonly old: Hole;
  /** Old − new, with the bridge where the strings want it, and where the holes match best. mm */
  readonly placed: Point;
  readonly fitted: Point;
}

/** What it costs a string to set the bridge by its old holes. */
export interface MatchCost {
  readonly name: string;
  /** Break point moved toward the tail, mm. */
  readonly along: number;
  /** At the 12th fret, + sharp. */
  readonly cents: number;
}

/** The new pin holes against the old ones. */
export interface HoleMatch {
  readonly pairs: readonly HolePair[];
  /** Longest of `placed`, mm. */
  readonly worstPlaced: number;
  /** First to last hole, mm. */
  readonly spread: { readonly pins: number; readonly old: number };
  /** The move that matches the holes best, as a move of the whole bridge. */
  readonly fit: RigidFit;
  /** How that move shifts the break point on the centreline, mm: + toward the treble side, + toward the tail. */
  readonly shift: Point;
  /** String 1 and the last. */
  readonly costs: readonly MatchCost[];
}

/** Old slot and new slot at one place, along the centreline, mm. */
export interface SlotOverlap {
  readonly id: 'treble' | 'centre' | 'bass';
  readonly label: string;
  /** Shared width; − for the wood between them. */
  readonly shared: number;
  /** New front wall less old front wall: + when the new slot lies farther back. */
  readonly moved: number;
}

/** What the repair gives without the offset library. */
export interface RepairFound {
  readonly place: Result<FormerPlace>;
  /** Null without old holes or without pins. */
  readonly match: Result<HoleMatch> | null;
  /** Null without a slot to be filled. */
  readonly overlaps: Result<readonly SlotOverlap[]> | null;
}
