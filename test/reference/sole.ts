/**
 * Fit to a dome: R − √(R² − c²/4) over a chord c, mm, worked out before any code stood (a table of the trade, rounded to a
 * micron there). Radii in feet of 304.8 mm; chords 3 in, 6 in, 6 1/2 in and 190 mm.
 */
export const DOME_TABLE = [
  { feet: 25, over: { 76.2: 0.095, 152.4: 0.381, 165.1: 0.447, 190: 0.592 } },
  { feet: 28, over: { 76.2: 0.085, 152.4: 0.34, 165.1: 0.399, 190: 0.529 } },
  { feet: 30, over: { 76.2: 0.079, 152.4: 0.318, 165.1: 0.373, 190: 0.493 } },
  { feet: null, over: { 76.2: 0, 152.4: 0, 165.1: 0, 190: 0 } },
] as const;

/** Fall of a dome at a distance from where it is touched, mm. Computed apart from this program, double precision. */
export const DOME_FALLS = [
  { radius: 7620, x: 200, fall: 2.625124 },
  { radius: 4572, x: 90, fall: 0.885913 },
  { radius: 4572, x: 100, fall: 1.093744 },
  { radius: 4572, x: 180, fall: 3.544681 },
  { radius: 3048, x: 180, fall: 5.319603 },
] as const;

/** Footprint lost when t is sanded off a sole with sloped sides: 2·t·tan, tan 10° = 0.1763270, tan 15° = 0.2679492. */
export const SHRINKS = [
  { thickness: 1, degrees: 10, loss: 0.352654 },
  { thickness: 0.5, degrees: 15, loss: 0.2679492 },
  { thickness: 2, degrees: 45, loss: 4 },
  { thickness: 3, degrees: 0, loss: 0 },
] as const;
