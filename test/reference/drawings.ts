/**
 * Bulges over a chord of 10: bulge is tan of a quarter of the turn, + counter-clockwise (Autodesk's DXF reference);
 * radius and sagitta by hand: sagitta = bulge·chord/2, radius = (25 + sagitta²)/(2·sagitta).
 */
export const BULGES = [
  { bulge: Math.SQRT2 - 1, degrees: 90, radius: 7.0710678, sagitta: 2.0710678 },
  { bulge: 0.5, degrees: 106.2602, radius: 6.25, sagitta: 2.5 },
  { bulge: 0.2, degrees: 45.2397, radius: 13, sagitta: 1 },
  { bulge: 1, degrees: 180, radius: 5, sagitta: 5 },
] as const;

/**
 * $INSUNITS as other programs got it wrong, from published fault reports: an inch drawing's 0.226 is 5.7404 mm, whatever
 * $MEASUREMENT says; without a unit no size is known.
 */
export const DRAWN_IN_INCHES = { units: 0.226, mm: 5.7404 } as const;
