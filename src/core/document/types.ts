/** What is saved. Lengths in mm; the bridge outline in the footprint frame. An absent group means its defaults. */

import type { Point } from '../geom/types';
import type { Body } from './bodyTypes';
import type { Build } from './buildTypes';
import type { PinnedDimension } from './dimensionTypes';
import type { Hand } from './hand';
import type { Outline } from './outlineTypes';
import type { Repair } from './repairTypes';
import type { Sole } from './soleTypes';

export type { Hand } from './hand';
export type { ShapeName } from './outlineTypes';
export type NutDatum = 'front' | 'zero-fret' | 'board-end';
export type GapRule = 'equal-gaps' | 'equal-centres';
/** What a compensation figure reaches to. */
export type Reach = 'break-point' | 'slot-front' | 'slot-centre';
/** How the compensation wanted is found. */
export type CompensationBy = 'rule' | 'strings' | 'own';
/** How the straight saddle is laid through what the strings want. */
export type SaddleFit = 'least-squares' | 'minimax' | 'outer';

/** One figure for the treble side and one for the bass side. */
export interface TrebleBass {
  readonly treble: number;
  readonly bass: number;
}

/** A rule reading from the nut datum to a fret's crown. */
export interface ScaleReading {
  readonly fret: number;
  readonly value: number;
}

export interface About {
  readonly name: string;
  readonly notes: string;
  /** ISO 8601 instants. */
  readonly created: string;
  readonly changed: string;
  /** What it was copied from, as that stood; null for a design of its own. */
  readonly parent: { readonly id: string; readonly revision: number } | null;
  /** Ids of photos, whose bytes are kept apart. */
  readonly pictures: readonly string[];
}

export interface Instrument {
  readonly hand: Hand;
  /** count: the last fret. */
  readonly frets: { readonly count: number; readonly bodyJoin: number };
  /** Fingerboard widths; last: at the last fret, null when it was not read. */
  readonly widths: { readonly nut: number; readonly twelfth: number; readonly last: number | null };
  /** Of the fingerboard's top, null for a flat board. */
  readonly boardRadius: number | null;
  /** offset: − when the nut datum was moved toward the bridge. face: how far the nut's front face lies behind a zero fret. */
  readonly nut: { readonly datum: NutDatum; readonly offset: number; readonly face: number };
  readonly scale: {
    readonly from: 'entered' | 'readings';
    readonly entered: number;
    readonly readings: readonly ScaleReading[];
  };
  /** Board edge to the outside of the outer strings, at the nut and, when `spread` follows the edges, at the saddle. */
  readonly margins: TrebleBass;
  readonly gapRule: GapRule;
  /** Centre to centre within a course of two strings. */
  readonly pairGap: number;
  /** own: between the centres of the outer strings at the saddle, across the centreline. */
  readonly spread: { readonly from: 'edges' | 'own'; readonly own: number };
  /** Seam of the top against the board's centreline at the bridge: + toward the treble side. */
  readonly seamOffset: number;
}

/** How a string resists stretching and bending: from its core, or as measured `at` a scale and pitch. */
export type StringElastic =
  | {
      readonly kind: 'core';
      readonly coreDiameter: number;
      readonly coreShape: 'round' | 'hex';
      readonly modulus: number;
    }
  | {
      readonly kind: 'measured';
      readonly kappa: number;
      readonly b0: number;
      readonly at?: { readonly scaleLength: number; readonly frequency: number };
    };

/** From string 1 (treble) to string n (bass). */
export interface InstrumentString {
  readonly id: string;
  /** Strings of one course are stopped together; 1 is the treble course. */
  readonly course: number;
  readonly name: string;
  /** Open, Hz. */
  readonly frequency: number;
  /** Outside diameter. */
  readonly diameter: number;
  readonly wound: boolean;
  /** Whole string, g/m. */
  readonly massPerLength: number;
  readonly elastic: StringElastic;
  /** Where the figures come from, in words. */
  readonly source: string;
}

/** What is wanted once strung. Heights over and under the line of the fret tops. */
export interface PlayingSetup {
  readonly action: TrebleBass;
  /** String above the fret-top plane at the nut. */
  readonly nutHeight: TrebleBass;
  readonly relief: number;
  /** The frets that the straightedge for the relief rests on. */
  readonly reliefFrets: { readonly from: number; readonly to: number };
  /** Finger behind the fret, and its depth below the fret top. */
  readonly fingerDistance: number;
  readonly pushDown: number;
}

/** Setback per string id, mm, added to what the model wants: copied when accepted, so that later builds move no old drawing. */
export interface Learned {
  readonly byString: Readonly<Record<string, number>>;
  /** How many instruments it rests on. */
  readonly builds: number;
  /** ISO 8601 instant. */
  readonly accepted: string;
}

export interface Compensation {
  readonly by: CompensationBy;
  readonly rule: TrebleBass & { readonly reach: Reach; readonly source: string };
  /** Setback per string id, to the break point; a string without one takes the rule's line. */
  readonly own: Readonly<Record<string, number>>;
  readonly fit: {
    readonly firstFret: number;
    readonly lastFret: number;
    /** range: least squares over the frets; octave: the 12th fret alone in tune. */
    readonly match: 'range' | 'octave';
    readonly nut: 'stays' | 'moves';
    readonly line: SaddleFit;
  };
  /** What earlier instruments taught, as it was accepted; null when nothing was. Counts where the strings say what is wanted. */
  readonly learned: Learned | null;
}

export interface Slot {
  /** Front edge of the bridge to the front wall of the slot, along the centreline. */
  readonly fromFront: number;
  /** Over all, ends included, along the slot. */
  readonly length: number;
  readonly width: number;
  readonly ends: 'round' | 'square';
  /** stopped within the bridge, or open at both ends of it. */
  readonly run: 'stopped' | 'open';
  /** Where the string breaks over the saddle: 0 at the front wall, 0.5 in the middle, 1 at the back wall. */
  readonly crown: number;
  readonly depth: number;
  /** Slope of the slot when the bridge was bought slotted, radians: + when the bass lies farther back; null when it is fitted to the strings. */
  readonly slant: number | null;
}

export interface Pins {
  /** Back wall of the slot to the pin centres, along the centreline. */
  readonly from: number;
  /** Centre of the first to centre of the last pin, along the row. */
  readonly spread: number;
  readonly row: 'parallel' | 'square' | 'arc';
  /** How far the middle of a row on an arc lies behind the line of its outer pins; − ahead of it. */
  readonly rise: number;
  /** String ramps from the holes toward the saddle, as marks; null for none. */
  readonly ramp: { readonly length: number; readonly width: number } | null;
  /** Pilot drill. */
  readonly hole: number;
  /** Every second pin stands this far behind the first row; 0 for one row. */
  readonly stagger: number;
  /** Included angle of the reamer, degrees, as reamers are sold. */
  readonly taper: number;
  /** Diameter of the pin just under its head: what the mouth of the hole is reamed to. */
  readonly underHead: number;
}

/** Strings tied to a block, or held in holes at the back edge of a bridge without pins. */
export interface Ties {
  readonly kind: 'tie-block' | 'back-edge';
  /** Back wall of the slot to the front of the block, or to the holes' mouths. */
  readonly from: number;
  /** Centre of the first to centre of the last hole. */
  readonly spread: number;
  readonly hole: number;
  /** Centre of a hole above the sole. */
  readonly rise: number;
}

/** The cutter and base that cut the slot once the bridge is glued. */
export interface Cutting {
  readonly cutter: number;
  /** Middle of the cutter to the edge of the base that runs along the fence. */
  readonly base: number;
}

export interface Locating {
  readonly site: 'slot-ends' | 'outer-pin-holes' | 'free';
  readonly drill: number;
  /** Where free locating pins go, footprint frame. */
  readonly points: TrebleBassPoints | null;
  /** How much wider than a locating pin its hole in the caul is. */
  readonly clearance: number;
}

export interface TrebleBassPoints {
  readonly treble: Point;
  readonly bass: Point;
}

export interface Bridge {
  readonly outline: Outline;
  readonly slot: Slot;
  readonly pins: Pins | null;
  /** Null with pins, and while nothing was said of them. */
  readonly ties: Ties | null;
  /** Null while nothing was said of it. */
  readonly cutting: Cutting | null;
  /** Null while nothing was said of it. */
  readonly sole: Sole | null;
  readonly locating: Locating;
  /** At the slot. */
  readonly thickness: number;
  /** Width of the finish left under the bridge all round, which no glue holds. */
  readonly rim: number;
  /** Of the bridge's wood, kg/m³. */
  readonly density: number;
}

/** Kinds of height limits to start from. */
export type HeightKindName = 'steel' | 'classical' | 'ukulele';

/** The chain of heights from the frets to the saddle. */
export interface HeightGate {
  readonly kind: HeightKindName;
  /** Straightedge on the frets against the bridge top at the saddle: + above it, − below it; null until it was read. */
  readonly straightedge: number | null;
  /** Under the saddle; 0 for none. */
  readonly pickup: number;
  /** Break point to where the string leaves the saddle's back: pin or tie hole, along the string. */
  readonly run: number;
}

/** A bridge that is there already, as read. Distances from the nut datum or the 12th fret to the break point. */
export interface Audit {
  readonly from: 'nut' | 'twelfth';
  readonly treble: number | null;
  readonly bass: number | null;
  /** Read at the 12th fret against the open octave, + sharp. */
  readonly centsTreble: number | null;
  readonly centsBass: number | null;
  readonly actionTreble: number | null;
  readonly actionBass: number | null;
  /** Thickness of the saddle, and from its front face to where the outer strings break. */
  readonly saddleThickness: number;
  readonly crown: number;
  readonly slotWidth: number;
  readonly pinSpread: number | null;
  readonly pinsFromSlot: number | null;
  readonly pinsToBack: number | null;
  readonly ahead: number | null;
}

export interface Project {
  readonly format: 'saddlemark-project';
  readonly version: 1;
  readonly id: string;
  readonly revision: number;
  readonly about: About;
  readonly instrument: Instrument;
  readonly strings: readonly InstrumentString[];
  readonly setup: PlayingSetup;
  readonly compensation: Compensation;
  readonly bridge: Bridge;
  readonly height: HeightGate;
  readonly audit: Audit;
  /** Null while nothing was said of it. */
  readonly body: Body | null;
  /** Null for new work. */
  readonly repair: Repair | null;
  readonly dimensions: readonly PinnedDimension[];
  /** Ids of the sheets to print, in the order in which they were chosen. */
  readonly sheets: { readonly chosen: readonly string[] };
  /** One sigma of a figure behind the compensation, where the maker's own differs from the usual. */
  readonly doubts: Readonly<Record<string, number>>;
  /** Limits of the checks, where the maker's own differ from the usual. */
  readonly limits: Readonly<Record<string, number>>;
  /** Null for a model; an instrument made from it has what was read and done. */
  readonly build: Build | null;
}
