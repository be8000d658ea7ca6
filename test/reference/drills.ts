/** Drill sizes and tapers from outside. 25.4 mm to the inch exactly: international yard and pound agreement, 1959. */

/**
 * #80 first, mm: table "Drills, Sizes, Threads & Preferred Sizes" v.2 of 2007-02-12, public domain, circuitousroot.com,
 * read down to #57 in a stored copy.
 */
export const FINE_NUMBERS_MM = [
  0.3429, 0.3683, 0.4064, 0.4572, 0.508, 0.5334, 0.5715, 0.6096, 0.635, 0.6604, 0.7112, 0.74168, 0.7874, 0.8128, 0.8382,
  0.889, 0.9144, 0.9398, 0.9652, 0.9906, 1.016, 1.0414, 1.0668, 1.0922,
] as const;

/**
 * Name, inches, mm as the source has it. Published: #54, #53, #60, #80, 1/16 circuitousroot.com; #41, #7, A, Z, #1
 * unitplanet.com, drill bit sizes. The others are ASME B94.11M from memory; the mm are hand arithmetic.
 */
export const DRILL_ROWS = [
  ['#80', 0.0135, 0.3429],
  ['#60', 0.04, 1.016],
  ['#54', 0.055, 1.397],
  ['#53', 0.0595, 1.5113],
  ['1/16 in', 0.0625, 1.5875],
  ['#41', 0.096, 2.4384],
  ['#7', 0.201, 5.1054],
  ['#1', 0.228, 5.7912],
  ['letter A', 0.234, 5.9436],
  ['letter Z', 0.413, 10.4902],
  ['#52', 0.0635, 1.6129],
  ['#51', 0.067, 1.7018],
  ['#50', 0.07, 1.778],
  ['#48', 0.076, 1.9304],
  ['5/64 in', 0.078125, 1.984375],
  ['#43', 0.089, 2.2606],
  ['#42', 0.0935, 2.3749],
  ['3/32 in', 0.09375, 2.38125],
  ['#30', 0.1285, 3.2639],
  ['1/8 in', 0.125, 3.175],
  ['#12', 0.189, 4.8006],
  ['3/16 in', 0.1875, 4.7625],
  ['#11', 0.191, 4.8514],
  ['#10', 0.1935, 4.9149],
  ['#9', 0.196, 4.9784],
  ['#8', 0.199, 5.0546],
  ['13/64 in', 0.203125, 5.159375],
  ['7/32 in', 0.21875, 5.55625],
  ['letter E', 0.25, 6.35],
  ['1/4 in', 0.25, 6.35],
  ['1/64 in', 0.015625, 0.396875],
  ['1/2 in', 0.5, 12.7],
] as const;

/** #56 to #1, inches: the whole of a machinist's drill look-up in public source code, its author not named. */
export const NUMBERS_INCHES = [
  0.0465, 0.052, 0.055, 0.0595, 0.0635, 0.067, 0.07, 0.073, 0.076, 0.0785, 0.081, 0.082, 0.086, 0.089, 0.0935, 0.096,
  0.098, 0.0995, 0.1015, 0.104, 0.1065, 0.11, 0.111, 0.113, 0.116, 0.12, 0.1285, 0.136, 0.1405, 0.144, 0.147, 0.1495,
  0.152, 0.154, 0.157, 0.159, 0.161, 0.166, 0.1695, 0.173, 0.177, 0.18, 0.182, 0.185, 0.189, 0.191, 0.1935, 0.196,
  0.199, 0.201, 0.204, 0.2055, 0.209, 0.213, 0.221, 0.228,
] as const;

/** A to Z, mm to four digits: github.com/DeflateAwning/metric-imperial-drill-chart, after Wikipedia, Drill bit sizes. */
export const LETTERS_MM = [
  5.944, 6.045, 6.147, 6.248, 6.35, 6.528, 6.629, 6.756, 6.909, 7.036, 7.137, 7.366, 7.493, 7.671, 8.026, 8.204, 8.433,
  8.611, 8.839, 9.093, 9.347, 9.576, 9.804, 10.08, 10.26, 10.49,
] as const;

/** Ratio 1:n, and its included angle in degrees: 2·atan(1 / 2n), computed apart. */
export const RATIOS = [
  [20, 2.864192],
  [50, 1.145877],
  [16, 3.579821],
  [19.09423, 3],
  [11.45188, 5],
  [28.64498, 2],
] as const;

/**
 * Included angle in degrees, taper in mm per mm, change of diameter over 10 mm, and depth for 0.1 mm on the diameter;
 * computed apart. 1:20 is also the Jarno taper of machine tools, 0.600 in per foot.
 */
export const TAPERS = [
  [2.864192, 0.05, 0.5, 2.0],
  [3, 0.0523718, 0.5237, 1.909],
  [5, 0.0873219, 0.8732, 1.145],
] as const;
