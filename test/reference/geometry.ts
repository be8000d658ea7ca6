/**
 * A circle of radius 1 by four cubics with handles k = 4/3·(√2 − 1): the usual figures, computed apart from this
 * program. The area is 2 + 2.4k − 0.6k².
 */
export const CUBIC_CIRCLE = {
  handle: 0.5522847498307935,
  worstRadius: 1.00027253,
  worstAt: 0.211325,
  area: 3.1424723326565,
};

/** One cubic that stands for an arc with handles 4/3·tan(turn/4): [turn in degrees, radius error as a share of it]. */
export const CUBIC_ARC_ERROR = [
  [90, 2.7253e-4],
  [60, 2.386e-5],
  [45, 4.246e-6],
  [30, 3.727e-7],
] as const;

/** [radius, chord, sagitta R − √(R² − c²/4), arc − chord], mm: handbook formula, computed apart from this program. */
export const SAGITTAS = [
  [254, 52, 1.334213, 0.09124],
  [305, 52, 1.110217, 0.063186],
  [406.4, 70, 1.509941, 0.086822],
  [508, 100, 2.466618, 0.162167],
  [4572, 180, 0.885913, 0.011627],
  [7620, 400, 2.625124, 0.04594],
] as const;

/**
 * Arcs over a chord of 10 told by their bulge, tan(turn/4), as in the DXF reference: [bulge, turn in degrees, radius,
 * sagitta]. Sagitta = bulge·chord/2.
 */
export const BULGES = [
  [Math.SQRT2 - 1, 90, 7.0710678, 2.0710678],
  [0.5, 106.2602, 6.25, 2.5],
  [0.2, 45.2397, 13, 1],
  [1, 180, 5, 5],
] as const;

/**
 * Polygons with [points, area, centroid] by hand. The areas are + where atan2(y, x) grows along the outline, which with
 * y down is clockwise on the page; the third runs the other way.
 */
export const POLYGONS = [
  {
    points: [
      [0, 0],
      [4, 0],
      [4, 3],
    ],
    area: 6,
    centroid: [8 / 3, 1],
  },
  {
    points: [
      [0, 0],
      [6, 0],
      [6, 2],
      [2, 2],
      [2, 5],
      [0, 5],
    ],
    area: 18,
    centroid: [7 / 3, 11 / 6],
  },
  {
    points: [
      [3, 4],
      [5, 11],
      [12, 8],
      [9, 5],
      [5, 6],
    ],
    area: -30,
    centroid: [43 / 6, 137 / 18],
  },
] as const;

/**
 * A closed loop with two cubics: from (0, 0) by (30, −25) (70, 40) to (100, 10), straight to (100, 60), by (60, 90)
 * (20, 20) to (0, 60), and straight back. Area, centroid and extremes by numerical quadrature and root finding in
 * mpmath 1.3 with 30 digits.
 */
export const CUBIC_LOOP = {
  area: 5222.5,
  centroid: [48.9028699081355, 32.1388110054936],
  bounds: { minX: 0, minY: -5.8567263041247, maxX: 100, maxY: 67.7125720463054 },
};

/** Distances from points to the first cubic of the loop alone, as an open path: [x, y, distance]; mpmath as above. */
export const CUBIC_DISTANCES = [
  [50, 0, 6.05837422526205],
  [40, 20, 16.2931975267026],
  [80, 30, 11.9422022975012],
  [10, -10, 4.71309568129321],
  [-5, 3, 5.8309518948453],
  [60, 5, 6.29713837350331],
] as const;
