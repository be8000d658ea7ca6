import type { TrebleBass } from '../document/types';
import type { AuditLimits } from './auditLimits';

/** One string of a bridge that is there. */
export interface AuditString {
  /** Where it crosses the saddle, mm, + toward the treble. */
  readonly x: number;
  /** Compensation wanted, mm behind the octave line. */
  readonly wanted: number;
  /** Rule reading to the break point along the centreline, mm; the outer strings need one, null between them takes their line. */
  readonly distance: number | null;
  /** Read at the 12th fret against the open octave, + sharp; null when not read. */
  readonly cents: number | null;
}

/** The pins of the bridge, mm. */
export interface AuditPins {
  /** Centre of the first to centre of the last. */
  readonly spread: number;
  /** Outer string spacing wanted at the saddle. */
  readonly spacing: number;
  readonly hole: number;
  /** Back wall of the slot to the pin centres. */
  readonly fromSlot: TrebleBass;
  /** Pin centres to the back edge of the bridge, the least of them. */
  readonly toBack: number;
}

export interface BridgeAuditArguments {
  /** mm. */
  readonly scaleLength: number;
  /** mm, − when the nut datum lies nearer the bridge than the frets were laid out for. */
  readonly nutOffset: number;
  /** Where the readings start: the nut datum or the crown of the 12th fret. */
  readonly from: 'nut' | 'twelfth';
  /** String 1 (treble) first. */
  readonly strings: readonly AuditString[];
  /** thickness of the saddle; crown: from its front face to the break point at the outer strings, both across it, mm. */
  readonly saddle: { readonly thickness: number; readonly crown: TrebleBass };
  /** Across the slot, mm; the saddle stands against its front wall. */
  readonly slotWidth: number;
  readonly pins: AuditPins | null;
  /** Front edge of the bridge to the front wall of the slot, mm; null when not read. */
  readonly ahead: TrebleBass | null;
  /** Back wall of the slot to the tie block or the back edge where there are no pins, mm; null when not read. */
  readonly behind: TrebleBass | null;
  /** Over fret 12, mm; null when it is not in question. */
  readonly action: { readonly present: TrebleBass; readonly wanted: TrebleBass } | null;
  readonly limits: AuditLimits;
}

/** One string's compensation as it is against what is wanted. */
export interface StringAudit {
  readonly x: number;
  /** mm behind the octave line. */
  readonly present: number;
  readonly wanted: number;
  /** wanted − present, mm: + when the saddle must go away from the nut. */
  readonly travel: number;
  /** What that makes at the 12th fret as it is, cents: + sharp. */
  readonly cents: number;
  /** Where this saddle can be made to break, mm behind the octave line, land kept on both sides. */
  readonly reach: { readonly front: number; readonly back: number };
  /** Cents that shaping leaves: + sharp; 0 when the mark lies within reach. */
  readonly leftCents: number;
  /** Cents read less cents from the geometry, and whether that is within the limit; null when none were read. */
  readonly reading: { readonly difference: number; readonly agrees: boolean; readonly travel: number } | null;
}

/** What cutting a new slot would take. */
export interface RecutPlan {
  /** Break-point line with the least worst miss, as fitSaddleLine. */
  readonly line: { readonly centre: number; readonly slope: number };
  /** How far the middle of the slot moves, mm: + away from the nut. For moving the bridge instead: the same. */
  readonly shift: TrebleBass & { readonly centre: number };
  /** How far it turns, radians: + carries the treble end away from the nut. */
  readonly turn: number;
  /** Thinnest saddle on that line on which every string reaches its mark, mm. */
  readonly thicknessNeeded: number;
  /** Wood left ahead of the slot and behind it (to the edge of the pin holes where there are pins), mm; null when not read. */
  readonly wallAhead: number | null;
  readonly wallBehind: number | null;
  /**
   * stay: the pins keep their holes · redrill: plug them and drill `pinMove` farther back · no-room: that would come too
   * near the back edge. null without pins.
   */
  readonly pins: 'stay' | 'redrill' | 'no-room' | null;
  /** mm, 0 when they stay. */
  readonly pinMove: number;
}

/** What speaks for the verdict, or wants a look. Units as its code says; `string` counts from 0. */
export interface AuditReason {
  readonly code: /** Worst error as it is, cents. */
    | 'cents-off'
    /** Worst error left after shaping, cents. */
    | 'reach-short'
    /** Compensation below 0, present or wanted: mm. Nearly always a slip. */
    | 'negative-present'
    | 'negative-wanted'
    /** Cents read and geometry differ, cents. */
    | 'cents-disagree'
    /** On the new line the saddle is too thin for every string; mm. */
    | 'saddle-thin'
    /** The saddle is thicker than the slot is wide; mm. */
    | 'saddle-slot'
    /** A new slot would lie too far from the old one, too near the front edge, or too near what is behind it; mm. */
    | 'shift-far'
    | 'wall-ahead'
    | 'wall-behind'
    /** Pins against the new slot; mm. */
    | 'pins-redrill'
    | 'pins-no-room'
    /** Pins stand aside from their strings by this much on each side, + outward; mm. */
    | 'pins-aside';
  readonly string: number | null;
  readonly value: number;
  readonly limit: number;
  /** null when the limit follows from the other figures. */
  readonly source: string | null;
}

export interface BridgeAudit {
  readonly strings: readonly StringAudit[];
  /** leave · shape-saddle: every string's mark lies on the saddle · recut-slot: fill it and cut it again · move-bridge. */
  readonly verdict: 'leave' | 'shape-saddle' | 'recut-slot' | 'move-bridge';
  readonly reasons: readonly AuditReason[];
  readonly recut: RecutPlan;
  /** How much higher the saddle must be for the action wanted, mm: − lower; null when action is not in question. */
  readonly saddleChange: TrebleBass | null;
}
