import type { TrebleBass } from '../document/types';
import type { HeightLimits } from './heightLimits';

/** How a string runs across: its x at the nut and where it breaks over the saddle, mm, and how far behind the octave line that is. */
export interface StringRun {
  readonly nutX: number;
  readonly saddleX: number;
  readonly setback: number;
}

/** What sets the strings' heights, mm. */
export interface NeckFigures {
  readonly scaleLength: number;
  /** String above the tops of the frets at the nut, under the outer strings; those between follow evenly. */
  readonly nutHeight: TrebleBass;
  /** Clearance over fret 12 wanted, open, under the outer strings; those between follow evenly. */
  readonly action: TrebleBass;
  /** Deepest dip of the fret tops below a straightedge on `reliefFrets`. */
  readonly relief: number;
  readonly reliefFrets: readonly [number, number];
  /** Of the fret tops across the board; null for a flat board. */
  readonly boardRadius: number | null;
  /** String 1 (treble) first. */
  readonly strings: readonly StringRun[];
}

/** What a maker measures before a bridge is accepted, mm. */
export interface HeightChainArguments extends NeckFigures {
  /**
   * A straightedge laid along the middle of the board on the frets and reaching to the saddle line: + when it passes above
   * the top of the bridge, − when it would lie below it (run it beside the bridge, or rest it on a block and subtract).
   */
  readonly airspace: number;
  /** Thickness of the bridge at the slot. */
  readonly bridgeThickness: number;
  readonly slotDepth: number;
  /** Height of the saddle as it is or as bought; null when it is not known. */
  readonly saddleBlank: number | null;
  /** Break point back to where the string leaves the top of the bridge: pin hole, ramp or tie hole; null when not known. */
  readonly run: number | null;
  /** Pickup that lies in the slot under the saddle; 0 for none. */
  readonly pickupThickness: number;
  readonly limits: HeightLimits;
}

/** One string at the saddle. */
export interface StringHeight {
  /** Above the straightedge along the middle of the board, mm: the fret-top plane. */
  readonly height: number;
  /** Above the straight line between the outer strings, mm: how far the saddle's top is arched here. */
  readonly lift: number;
}

/** One string over the saddle. */
export interface SaddleHeight extends StringHeight {
  /** Top of the saddle above the top of the bridge, mm. */
  readonly proud: number;
  /** The saddle from its foot to its top, mm. */
  readonly saddle: number;
  /** Share of that in the slot; a pickup beneath takes from it. */
  readonly share: number;
  /** Between the top of the bridge and the string behind the saddle, degrees; null when the run is not known. */
  readonly breakDeg: number | null;
}

/**
 * What stands against this bridge, or asks for a look. `value` and `limit` in mm, a share for share codes, degrees for
 * break codes.
 */
export interface HeightReason {
  readonly code: /** The straightedge stands too low or too high over the bridge. */
    | 'airspace-low'
    | 'airspace-high'
    /** The saddle stands up too little or too far; value is the worst string's. */
    | 'proud-low'
    | 'proud-high'
    /** The bridge is thinner or thicker than is usual. */
    | 'thickness-low'
    | 'thickness-high'
    /** Too little wood under the slot. */
    | 'wood-thin'
    /** Less of the saddle stands in the slot than must, and the slot cannot be cut deeper. */
    | 'share-low'
    /** The slot wants cutting deeper, and can be: value is its depth, limit the depth wanted. */
    | 'slot-deeper'
    /** The strings bend less over the saddle than is usual; ramps behind it restore that. */
    | 'break-low'
    /** The saddle is too low a blank: value is its height, limit what is needed. */
    | 'blank-short';
  /** wrong: the verdict rests on it; look: the work can go on. */
  readonly weight: 'wrong' | 'look';
  readonly value: number;
  readonly limit: number;
  /** Where the limit comes from; null when it follows from the other figures. */
  readonly source: string | null;
}

/** Bridge thicknesses at the slot that would do, mm. */
export interface ThicknessRange {
  readonly least: number;
  readonly most: number;
}

/** The height of everything between the frets and the saddle's top. */
export interface HeightChain {
  readonly strings: readonly SaddleHeight[];
  /** Least and most of the strings' `proud`, mm. */
  readonly proud: { readonly least: number; readonly most: number };
  /** mm. */
  readonly woodUnder: number;
  /** Height that a saddle blank needs at its highest string, mm. */
  readonly blankNeeded: number;
  /**
   * A pickup takes its thickness off the saddle's foot. Left uncut, the saddle would stand up by that much more (`lift`),
   * and the action over fret 12 would grow by half of it (`actionRise`), mm.
   */
  readonly pickup: { readonly lift: number; readonly actionRise: number };
  /** null when no thickness within the limits would do. */
  readonly thickness: ThicknessRange | null;
  /**
   * go: build on it · change-bridge: a bridge of `thickness` would do (the one at hand may be within, its slot being too
   * deep) · set-neck-first: none would, at this neck angle.
   */
  readonly verdict: 'go' | 'change-bridge' | 'set-neck-first';
  readonly reasons: readonly HeightReason[];
}
