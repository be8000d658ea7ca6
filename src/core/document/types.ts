/** What is saved. Lengths in mm; the bridge outline in the footprint frame. An absent group means its defaults. */

export type Hand = 'right' | 'left';
export type NutDatum = 'front' | 'zero-fret' | 'board-end';
export type GapRule = 'equal-gaps' | 'equal-centres';
/** What a compensation figure reaches to. */
export type Reach = 'break-point' | 'slot-front' | 'slot-centre';
export type ShapeName = 'belly' | 'tie-block' | 'small-ukulele';

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
}

export interface Instrument {
  readonly hand: Hand;
  readonly frets: { readonly bodyJoin: number };
  /** Fingerboard widths. */
  readonly widths: { readonly nut: number; readonly twelfth: number };
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
  /** own: between the centres of the outer strings at the saddle, across the centreline. */
  readonly spread: { readonly from: 'edges' | 'own'; readonly own: number };
}

/** From string 1 (treble) to string n (bass). */
export interface InstrumentString {
  readonly id: string;
  readonly name: string;
  /** Outside diameter. */
  readonly diameter: number;
}

/** What is wanted once strung; printed on the sheet. */
export interface PlayingSetup {
  readonly action: TrebleBass;
  readonly relief: number;
}

export interface Compensation {
  readonly by: 'rule' | 'own';
  readonly rule: TrebleBass & { readonly reach: Reach; readonly source: string };
  /** Setback per string id, to the break point; a string without one takes the rule's line. */
  readonly own: Readonly<Record<string, number>>;
}

export interface Slot {
  /** Front edge of the bridge to the front wall of the slot, along the centreline. */
  readonly fromFront: number;
  /** Over all, ends included, along the slot. */
  readonly length: number;
  readonly width: number;
  readonly ends: 'round' | 'square';
  /** Where the string breaks over the saddle: 0 at the front wall, 0.5 in the middle, 1 at the back wall. */
  readonly crown: number;
}

export interface Pins {
  /** Back wall of the slot to the pin centres, along the centreline. */
  readonly from: number;
  /** Centre of the first to centre of the last pin, along the row. */
  readonly spread: number;
  readonly row: 'parallel' | 'square';
  /** Pilot drill. */
  readonly hole: number;
}

export interface Locating {
  readonly site: 'slot-ends' | 'outer-pin-holes';
  readonly drill: number;
}

export interface Bridge {
  readonly outline: { readonly shape: ShapeName; readonly parameters: Readonly<Record<string, number>> };
  readonly slot: Slot;
  readonly pins: Pins | null;
  readonly locating: Locating;
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
}
