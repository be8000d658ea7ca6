/**
 * Nut 0.5, action 2.2 over the 12th, relief 0.15 between frets 1 and 14, scale 645. By hand: fret 1 at 36.2011, fret 12 at
 * 322.5, fret 14 at 357.6852; t = 286.2989/321.4841 = 0.890555; dip 0.15·4·t·(1 − t) = 0.058481;
 * 0.5 + 2·(2.2 − 0.058481 − 0.5) = 3.783039. Airspace 0.4 and 1.6 are added.
 */
export const STEEL_645 = { height: 3.783, proudAt04: 4.183, proudAt16: 5.383 } as const;

/** R − √(R² − x²): half chord and radius, mm. Computed here with double precision; R 254 is a 10 in board. */
export const SAGITTAS = [
  { radius: 254, x: 26, fall: 1.334213 },
  { radius: 305, x: 26, fall: 1.110217 },
  { radius: 406.4, x: 35, fall: 1.509941 },
  { radius: 508, x: 50, fall: 2.466618 },
  { radius: 4572, x: 90, fall: 0.885913 },
] as const;

/** Saddle above the bridge over the way to the pins, mm, and the angle in degrees: atan by a pocket calculator. */
export const BREAK_ANGLES = [
  { proud: 3.175, run: 11.1125, degrees: 15.9454 }, // 1/8 in over 7/16 in: tan = 2/7
  { proud: 1.5875, run: 11.1125, degrees: 8.1301 }, // 1/16 in over 7/16 in: tan = 1/7
] as const;
