/**
 * Shrinkage: B. Efron and C. Morris, Stein's paradox in statistics, Scientific American 236 (May 1977), batting averages of
 * 18 players in early season. Mean and factor as printed; three of its rows [read, drawn toward the mean]. From memory.
 */
export const BATTING = {
  mean: 0.265,
  factor: 0.212,
  rows: [
    [0.4, 0.294],
    [0.378, 0.289],
    [0.156, 0.242],
  ],
} as const;

/**
 * Saddle travel and cents at the 12th fret, 1200/ln 2 · (2^(12/12) − 1)/scale, to the digit printed: [scale mm, cents a mm].
 * 1731.234/645 = 2.684, /650 = 2.663, /432 = 4.007, /346 = 5.004; worked before any code stood.
 */
export const CENTS_A_MM = [
  [645, 2.68],
  [650, 2.66],
  [432, 4.0],
  [346, 5.0],
] as const;

/**
 * Two levels of normal figures by hand. Readings 0.5, 0.7 and 0.9 mm; model held to 0.4 mm, spread to 0.5 mm worth three
 * instruments: mean 0.7, sum of squares about it 0.08, degrees 3 + 3 − 1 = 5, variance (3·0.25 + 0.08)/5 = 0.166, share of
 * the mean 0.16/(0.16 + 0.166/3) = 0.743034, estimate 0.520124, of the next √(0.166·(1 + 0.743034/3)) = 0.455098, times
 * Student's 2.570582 (0.95, 5 degrees: printed tables) 1.169868.
 */
export const THREE_READ = {
  errors: [0.5, 0.7, 0.9],
  model: 0.4,
  spread: 0.5,
  factor: 0.743034,
  estimate: 0.520124,
  doubt: 1.169868,
} as const;

/** One reading of 0.6 mm by the same rule: share 0.16/(0.16 + 0.25) = 0.390244, estimate 0.234146. */
export const ONE_READ = { error: 0.6, factor: 0.390244, estimate: 0.234146 } as const;
