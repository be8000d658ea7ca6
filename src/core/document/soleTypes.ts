/** Feeler-gauge readings under a sole, one at each named point, mm; 0 where it touches. */
export interface SoleGaps {
  readonly bassTip: number;
  readonly bassWing: number;
  readonly centre: number;
  readonly trebleWing: number;
  readonly trebleTip: number;
}

/** The sole of the bridge, its wings and the top beneath it, mm. A radius of null is flat. */
export interface Sole {
  readonly wing: {
    /** Thickness at the tip, and where the wing begins. */
    readonly tip: number;
    readonly inner: number;
    /** From the centreline to where the wing begins. */
    readonly begin: number;
  };
  /** Of the bridge's upper face, along its length. */
  readonly face: number | null;
  /** How far the sides lean in from the sole upward, radians. */
  readonly draft: number;
  /** To be sanded off the sole all over, beside what fits it to the top. */
  readonly sanding: number;
  /** Hollow of the sole along the bridge's length and across it. */
  readonly across: number | null;
  readonly along: number | null;
  /** The top under the bridge: the radius of its dome, or as read with feeler gauges. */
  readonly top: {
    readonly from: 'radius' | 'gaps';
    /** Dome along the bridge's length (across the instrument), and along the strings. */
    readonly across: number | null;
    readonly along: number | null;
    readonly gaps: SoleGaps;
    /** Of the sole that the gaps were read under. */
    readonly under: number | null;
  };
}
