/** What may be typed of a string-up, least and most. Cents beyond that are another note. */
export const STRING_UP_LIMITS = {
  cents: [-100, 100],
  /** ± of the tuner, cents. */
  tuner: [0.05, 20],
  /** Highest fret that is read. */
  fret: [1, 24],
  /** mm */
  action: [0, 15],
  relief: [-2, 3],
  /** Where a string broke or was to break, behind the octave line, and what was learned to add to it, mm. */
  setback: [-50, 50],
  learned: [-15, 15],
  /** Relative, percent. */
  humidity: [0, 100],
} as const;

/** Most frets that are read in one string-up. */
export const MOST_FRETS_READ = 6;
/** Characters. */
export const LONGEST_METER = 100;
export const LONGEST_NOTE = 2000;
