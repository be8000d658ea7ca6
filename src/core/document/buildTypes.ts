/** One instrument made from a model: what was read, done and learned while its bridge was mounted. Lengths in mm. */

import type { Point } from '../geom/types';

/** When a bridge's place was read: before tape, taped, in wet glue, or once cured. */
export type RoundStage = 'dry' | 'taped' | 'wet' | 'cured';

/** A reading as it was taken. */
export interface TakenReading {
  readonly id: string;
  /** What was read: the name of one of this instrument's lines to read, or of a free pair of its points. */
  readonly line: string;
  /** As the tool showed it. */
  readonly value: number;
  /** The maker's name for the tool. */
  readonly tool: string;
  /** One sigma of this reading, as the tool stood when it was taken. */
  readonly sigma: number;
}

/** How readings are carried down from the frets to the top. */
export interface Drop {
  /** The square stands on the top, or is held against the rule. */
  readonly by: 'top' | 'rule';
  /** Of the fret tops against the top, radians: + when they rise toward the tail. */
  readonly angle: number;
  /** Line of the fret tops over the top, at the bridge. */
  readonly height: number;
}

/** One time that the bridge's place was read. */
export interface PlaceRound {
  readonly id: string;
  /** ISO 8601 instant. */
  readonly at: string;
  readonly stage: RoundStage;
  readonly readings: readonly TakenReading[];
  /** The maker took this place as good. */
  readonly accepted: boolean;
}

/** Times on the glue's label, minutes; null until they were read there. */
export interface GlueTimes {
  readonly open: number | null;
  readonly closed: number | null;
  readonly clamp: number | null;
  readonly cure: number | null;
}

/** How the bridge is to be glued. */
export interface GluePlan {
  readonly adhesive: string;
  /** Chosen, pounds a square inch, as adhesive data give it; null until chosen. */
  readonly pressure: number | null;
  readonly times: GlueTimes;
  /** Where clamps go, footprint frame; the first is tightened first. Null: as proposed. */
  readonly clamps: readonly Point[] | null;
  /** How far into the body a clamp reaches. */
  readonly reach: number;
}

/** Air where the work is done, or where the instrument is kept. */
export interface Air {
  readonly celsius: number;
  /** Relative, percent. */
  readonly humidity: number;
}

/** How far a piece of wood moves across its grain for each percent of moisture, as a share of its width. */
export interface GrainMovement {
  /** Id of a row of the table of woods; '' for a wood that is not in it. */
  readonly wood: string;
  /** The maker's own in place of the table's; null for the table's. */
  readonly radial: number | null;
  readonly tangential: number | null;
}

export interface WoodUsed {
  readonly id: string;
  /** What of the instrument it is: top, bridge, plate. */
  readonly part: string;
  readonly species: string;
  readonly origin: string;
}

/** When an instrument was read: at its first setting, when strings and top had settled, or in another season. */
export type StringUpStage = 'first' | 'settled' | 'season';

/** How the crown stood when it was read: straight as planned, shaped to the plan, or filed after an earlier reading. */
export type CrownAsRead = 'straight' | 'shaped' | 'filed';

/** Pitch of a strung instrument against equal temperament with its open strings in tune. */
export interface StringUp {
  readonly id: string;
  /** ISO 8601 instant. */
  readonly at: string;
  readonly stage: StringUpStage;
  readonly crown: CrownAsRead;
  /** ± of one reading of the tuner, cents, in 19 cases of 20. */
  readonly tuner: number;
  /** Cents, + sharp, by string id and then fret number. */
  readonly cents: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** As read; null where it was not. */
  readonly action: { readonly treble: number | null; readonly bass: number | null };
  readonly relief: number | null;
  readonly humidity: number | null;
  /** Which meter said so. */
  readonly meter: string;
  readonly note: string;
  /** What the plan was when it was strung: setback per string id, break point. */
  readonly predicted: Readonly<Record<string, number>>;
  /** Where each string broke when it was read, by the plan of that time: setback per string id. */
  readonly stood: Readonly<Record<string, number>>;
}

export interface Build {
  /** The maker's own number or name. */
  readonly serial: string;
  readonly woods: readonly WoodUsed[];
  /** Thickness of the top where the bridge goes, read at the soundhole's edge; null until then. */
  readonly top: number | null;
  /** Thickness of the finish film; null until it was measured. */
  readonly film: number | null;
  /** Rebate under the bridge's rim for the film; null for none. */
  readonly rebate: { readonly width: number; readonly depth: number } | null;
  readonly rounds: readonly PlaceRound[];
  /** Null: as is usual. */
  readonly drop: Drop | null;
  /** When each step of the work was ticked, ISO 8601 instants, by the step's name. */
  readonly steps: Readonly<Record<string, string>>;
  readonly glue: GluePlan | null;
  readonly shop: Air | null;
  /** Where it is to be kept. */
  readonly kept: Air | null;
  /** What moves how far when the air changes; null: as usual. */
  readonly movement: { readonly top: GrainMovement; readonly bridge: GrainMovement } | null;
  readonly stringUps: readonly StringUp[];
}
