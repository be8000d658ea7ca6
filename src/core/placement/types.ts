/** One place along the centreline, told from each datum, mm. */
export interface PlacementNumber {
  readonly id: string;
  /** "Break point, centre". */
  readonly label: string;
  readonly fromNut: number;
  readonly fromTwelfth: number;
  /** From the front face of the nut, when the datum is a zero fret; else null. */
  readonly fromNutFace: number | null;
}

/** A rule laid from a point of the instrument to a point of the bridge. */
export interface MeasuredDistance {
  readonly id: string;
  readonly fromId: string;
  readonly toId: string;
  /** "nut corner, treble". */
  readonly from: string;
  /** "front corner, bass". */
  readonly to: string;
  /** On the plan, mm; both points at one height. */
  readonly value: number;
}

/** The bold line ahead of the bridge that stands at a round figure from the nut datum. */
export interface SquareLine {
  readonly fromNut: number;
  readonly fromTwelfth: number;
  readonly fromNutFace: number | null;
}

/** What a maker measures by. */
export interface Placement {
  readonly numbers: readonly PlacementNumber[];
  readonly distances: readonly MeasuredDistance[];
  /** By the unit in use, since the line stands at a figure that is round in it. */
  readonly squareLine: { readonly mm: SquareLine; readonly in: SquareLine };
  /** Radians, the slot against square to the centreline: + when the bass lies farther back. */
  readonly slant: number;
  /** Cents at the 12th fret for 1 mm along the centreline. */
  readonly centsPerMm: number;
}
