/** What an offset may miss, as agreed before any code stood: mm² of area, mm from the outline that it keeps away from. */
export const OFFSET_LIMITS = { area: 0.02, distance: 0.002 } as const;

/**
 * A rectangle of 100 × 60 by +5 and −5: area and length by hand, 6000 + 5·320 + 25π and 320 + 10π, 90 × 50. With 64
 * chords in a quarter Shapely 1.8.5 gives 7678.531931 for the first.
 */
export const OFFSET_RECTANGLE = {
  width: 100,
  height: 60,
  by: 5,
  grown: { area: 7678.539816, length: 351.415927 },
  shrunk: { area: 4500, length: 280 },
} as const;

/**
 * An L of 1800 mm² by ±3. Grown: 1800 + 3·220 + 5 quarter discs, less the square that the inner corner counts twice,
 * 2486.343; Shapely 1.8.5 with 64 and 256 chords in a quarter 2486.339 and 2486.3427. Shrunk with a mitred inner corner
 * 1176 (54 × 14 and 14 × 30); with a round one, whose distance holds everywhere, the square at that corner gives way to
 * its quarter disc, + 9 − 9π/4: 1177.931, Shapely 1177.9315.
 */
export const OFFSET_L = {
  corners: [
    [0, 0],
    [60, 0],
    [60, 20],
    [20, 20],
    [20, 50],
    [0, 50],
  ],
  by: 3,
  grown: 1800 + 660 + (5 / 4) * 9 * Math.PI - 9,
  shrunkMitred: 1176,
  shrunk: 1176 + 9 - (9 / 4) * Math.PI,
} as const;

/**
 * The share of glue area that finish left under the rim costs, whole per cent: [length, width, rim, share], inches.
 * Worked out by hand from the sides alone, 1 − (length − 2·rim)(width − 2·rim) / (length·width).
 */
export const RIM_SHARES = [
  [6, 1, 1 / 8, 28],
  [6, 1.5, 1 / 8, 20],
  [6, 1, 1 / 16, 14],
  [6, 1.5, 1 / 16, 10],
  [6, 1, 1 / 32, 7],
  [6, 1.5, 1 / 32, 5],
] as const;
