/** Three readings, nut to 12th fret: 12 45/64, 12 11/16, 12 45/64 in. By hand, 25.4 mm to the inch. */
export const THREE_READINGS = {
  /** 12.703125, 12.6875 and 12.703125 in. */
  values: [322.659375, 322.2625, 322.659375],
  /** Mean 12.697917 in, doubled 25.395833 in. */
  scaleLength: 645.054,
  /** Deviations 0.0052083, −0.0104167, 0.0052083 in: √(1.62760e-4 / 2) = 0.0090211 in. */
  sigma: 0.229136,
  /** Student's t at 95 %, 2 degrees of freedom: 4.303 in GUM (JCGM 100:2008) table G.2, more digits from general tables. */
  factor: 4.302653,
  /** 2 · 4.302653 · 0.229136 / √3. */
  plusMinus: 1.13841,
} as const;

/**
 * One reading each to the 12th and the 24th fret, which stand at a half and three quarters of the scale. By hand:
 * scale (483.5 − 322)/0.25, offset 3·322 − 2·483.5; with 0.25 for one reading ± 1.959964·0.25·√2/0.25 and
 * ± 1.959964·0.25·√13 (1.959964: the normal distribution's factor for 95 %).
 */
export const TWO_FRETS = {
  readings: [
    { fret: 12, value: 322 },
    { fret: 24, value: 483.5 },
  ],
  ruleDoubt: 0.25,
  scaleLength: 646,
  scalePlusMinus: 2.771808,
  nutOffset: -1,
  offsetPlusMinus: 1.766688,
} as const;

/** Shares of the scale, nut to fret, 1 − 2^(−n/12): computed here with bc to 10 digits. */
export const FRET_SHARES: Readonly<Record<number, number>> = {
  3: 0.1591035847,
  5: 0.2508464616,
  7: 0.3325801081,
  9: 0.4053964425,
  12: 0.5,
  14: 0.5545506408,
  17: 0.6254232308,
  19: 0.6662900541,
};
