/** Twelve-tone equal temperament, from memory; computed apart from this program to 14 digits. */
export const PITCH = {
  semitone: 1.0594630943593,
  /** Nut to 1st fret as a part of the scale. */
  firstFret: 0.0561256873183,
  /** Its inverse: makers' "rule of 17.817", which cuts it short. */
  rule: 17.8171537451057,
  /** Cents at the open string for 1 mm of a 650 mm string; twice that when stopped at the octave. */
  centsPerMmOf650: 2.66344,
} as const;
