/** How drills are named: by inch fraction, by number or letter of the wire gauge, by millimetre. */
export type DrillFamily = 'fractional' | 'number' | 'letter' | 'metric';

/** A drill that can be bought. */
export interface Drill {
  readonly family: DrillFamily;
  /** As it is asked for: "3/16 in", "#12", "letter A", "4.8 mm". */
  readonly name: string;
  /** mm. */
  readonly diameter: number;
}
