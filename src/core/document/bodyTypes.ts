import type { Point } from '../geom/types';
import type { Hand } from './hand';

export type BraceKind = 'x-leg' | 'tone-bar' | 'finger' | 'fan' | 'transverse';

/** What the maker reads places along the centreline from. They are saved from the nut datum, whichever it is. */
export type BodyDatum = 'nut' | 'octave' | 'front';

/** A brace beneath the top, as found from outside: two points of its middle, body frame. */
export interface Brace {
  readonly id: string;
  readonly name: string;
  readonly kind: BraceKind;
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
  /** Below the top; null when it was not read. */
  readonly height: number | null;
  /** Found on this instrument; otherwise a guess to start from. */
  readonly read: boolean;
}

/** The bridge plate, glued beneath the top: a trapezoid, or a rectangle when both widths are the same. */
export interface Plate {
  /** y of its front edge. */
  readonly front: number;
  /** x of its middle. */
  readonly aside: number;
  /** Front edge to back edge. */
  readonly along: number;
  /** Across the instrument. */
  readonly acrossFront: number;
  readonly acrossBack: number;
  readonly thickness: number;
  /** As of a brace. */
  readonly read: boolean;
}

/** On the body's centreline. along: of an oval one; null for a round one. */
export interface Soundhole {
  readonly centre: number;
  readonly across: number;
  readonly along: number | null;
}

/** How near the cutaway comes to the centreline, and the y behind which the body is whole again. */
export interface Cutaway {
  readonly side: 'treble' | 'bass';
  readonly aside: number;
  readonly end: number;
}

/**
 * What lies beneath and around the bridge. Body frame: as the instrument frame of the body's own hand, x + toward its
 * treble side, y + toward the tail from the nut datum.
 */
export interface Body {
  /** Which hand the body was built for; null: as the instrument. A converted body keeps its braces. */
  readonly hand: Hand | null;
  readonly from: BodyDatum;
  /** Edge to edge of the top where the bridge lies, and from the bridge's front edge to the end of the body; null: not measured. */
  readonly across: number | null;
  readonly tail: number | null;
  readonly braces: readonly Brace[];
  readonly plate: Plate | null;
  readonly soundhole: Soundhole | null;
  readonly cutaway: Cutaway | null;
  /** For the wire of a pickup under the saddle. */
  readonly wireHole: { readonly at: Point; readonly diameter: number } | null;
}
