/**
 * Squaring by rule, mm: two points of the board at ±a, `ahead` of the front corners of a bridge that stand at ±76.2.
 * The first figure of a pair is crossed (bass to treble less treble to bass), the second along the sides (bass less
 * treble). `offset` moves the bridge toward the treble; `skew`, degrees, carries its treble corner toward the tail.
 * `tableMicrons`: µm, worked out before any code stood. `flat` and `rise10`: computed apart from this program (Python,
 * math.sqrt), points at one height and a bridge 10 mm below the frets. The skew of the last row is itself rounded to
 * 0.001°, worth 1.3 µm.
 */
export const SQUARING = [
  {
    a: 21.5,
    ahead: 632,
    offset: 1,
    skew: 0,
    tableMicrons: [306, -172],
    flat: [0.305547, -0.172456],
    rise10: [0.30551, -0.172435],
  },
  {
    a: 21.5,
    ahead: 632,
    offset: 0,
    skew: 0.3,
    tableMicrons: [789, -795],
    flat: [0.788594, -0.794989],
    rise10: [0.788498, -0.79489],
  },
  {
    a: 27.5,
    ahead: 274.2,
    offset: 1,
    skew: 0,
    tableMicrons: [707, -350],
    flat: [0.707474, -0.34974],
    rise10: [0.707063, -0.349514],
  },
  {
    a: 27.5,
    ahead: 274.2,
    offset: 0,
    skew: 0.3,
    tableMicrons: [746, -786],
    flat: [0.746369, -0.785666],
    rise10: [0.745935, -0.78516],
  },
  {
    a: 27.5,
    ahead: 274.2,
    offset: 1,
    skew: -0.284,
    tableMicrons: [0, 395],
    flat: [0.000909, 0.394026],
    rise10: [0.000909, 0.393772],
  },
] as const;

/** Half the length of that bridge, 6 in over all, mm. */
export const SQUARING_HALF_BRIDGE = 76.2;

/**
 * String gaps in inches: outside span 1.442, gauges that add up to 0.148, air (1.442 − 0.148) / 5 = 0.2588. The gauges
 * are those of a light set (from memory) whose sum is that figure. Source of the rule: theguitarmechanic.com, nut spacing.
 */
export const NUT_GAPS = {
  span: 1442 / 1000,
  gauges: [0.01, 0.013, 0.017, 0.026, 0.036, 0.046],
  air: 0.2588,
} as const;

/**
 * Even centres: [outer spacing, strings, pitch]. 46.475 mm for four strings: a ukulele maker's page, 15.49; six pins over
 * 2 1/8 and 2 3/16 in: frets.com and sillars.com, five gaps and not six: 17/40 in and 7/16 in by hand.
 */
export const EVEN_CENTRES = [
  { outer: 46.475, count: 4, pitch: 15.4916667 },
  { outer: 2.125 * 25.4, count: 6, pitch: 0.425 * 25.4 },
  { outer: 2.1875 * 25.4, count: 6, pitch: 0.4375 * 25.4 },
] as const;
