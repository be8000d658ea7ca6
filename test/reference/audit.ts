/** 1200/ln 2 = 1731.234049 cents; over 645 mm, at the octave. By hand. */
export const CENTS_PER_MM_645 = 2.684084;

/**
 * A straight saddle 3.2 thick that breaks in its middle, 2 mm behind the octave at the treble and 4 at the bass, 54 apart.
 * By hand: slope −2/54, so 1 mm across is √(1 + (2/54)²) = 1.000686 along the centreline. With 0.3 of land on both sides
 * 1.3 of each half is left: 2 ∓ 1.300891 at the treble.
 */
export const OLD_SADDLE = {
  reachTreble: { front: 0.699109, back: 3.300891 },
  /** Cents left when the mark is 4.2: (4.2 − 3.300891) · 2.684084. */
  leftCentsFor42: 2.413284,
} as const;
