import type { Path, Point } from '../geom/types';
import type { CrownPlace } from './crownReach';

/** A place on the bridge that a rule can find: a real corner, or the tangent point where a corner is rounded. */
export interface NamedPoint {
  /** Stable: "front-treble". */
  readonly id: string;
  /** For people: "front corner, treble". */
  readonly label: string;
  readonly at: Point;
}

/** An outline in the footprint frame with its named points and the lines drawn on its upper face. */
export interface Footprint {
  readonly outline: Path;
  readonly points: readonly NamedPoint[];
  readonly faceLines: readonly Path[];
}

/** A drilled hole: centre and diameter, mm. */
export interface Hole {
  readonly id: string;
  readonly label: string;
  readonly centre: Point;
  readonly diameter: number;
}

/** Where one string wants to break and where it does. */
export interface StringCompensation {
  readonly id: string;
  readonly name: string;
  readonly x: number;
  /** The figure asked for and the straight line's, behind the octave line. */
  readonly wanted: number;
  readonly line: number;
  /** line − wanted: + when the saddle stands too far back. */
  readonly miss: number;
  /** What the miss costs at the 12th fret: + is sharp. */
  readonly cents: number;
  /** Where in the saddle it must break, and what a shaped crown leaves. */
  readonly crown: CrownPlace;
  /** What is left once the crown is shaped, cents at the 12th fret: + is sharp. */
  readonly centsLeft: number;
  /** What the model wants, mm behind the octave line, and where in the saddle that is; null when there is no model. */
  readonly model: { readonly setback: number; readonly sigma: number; readonly crown: CrownPlace } | null;
}

/** The break-point line of the saddle, instrument frame. */
export interface SaddlePlace {
  /** y where it crosses the centreline. */
  readonly centre: number;
  /** dy/dx: − when the bass lies farther back. */
  readonly slope: number;
  readonly strings: readonly StringCompensation[];
}

/** The slot, instrument frame. */
export interface SlotPlace {
  readonly outline: Path;
  /** y on the centreline of the front wall, the middle and the back wall. */
  readonly front: number;
  readonly middle: number;
  readonly back: number;
  /** Ends of the slot's own centreline, over all. */
  readonly ends: { readonly treble: Point; readonly bass: Point };
}

/** The bridge in place, instrument frame. */
export interface BridgePlace {
  readonly footprint: Footprint;
  /** y where the front edge crosses the centreline. */
  readonly front: number;
  /** mm². */
  readonly area: number;
  readonly pins: readonly Hole[];
  /** y where the (first) pin row crosses the centreline; null without pins. */
  readonly pinRow: number | null;
  readonly locating: readonly Hole[];
  /** Corners or tangent points, and locating pins: what a rule is laid to. */
  readonly points: readonly NamedPoint[];
}
