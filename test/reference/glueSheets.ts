/**
 * The sheets around the glue joint, worked by hand from a steel-string of scale 645: strings over 54, compensation 1.5875 and
 * 3.96875 to the break point, slot 76.2 × 3.175 with round ends 7.4 behind the front edge, belly bridge 152.4 × 34.925, wings
 * 25.4, corners of radius 2, locating drill 1.5875 in the slot ends, 0.5 of room in the caul.
 *
 * break point   645 + (1.5875 + 3.96875)/2 = 647.778125; slant m = (1.5875 − 3.96875)/54 = −0.0440972, s = √(1 + m²) = 1.00097181
 * front edge    647.778125 − 1.5875 s − 7.4 = 638.789082
 * square line   638.789 − 15 = 623.789: 620, or 24 1/2 in = 622.3
 * locating pins 76.2/2 − 1.5875 = 36.5125 along the slant: x = ±36.5125/s = ±36.477051, y = 647.778125 ± 36.5125 m/s
 *               = 646.169588 on the treble side, 649.386662 on the bass side
 */
export const WINDOW = {
  /** From the square line to the front edge of the window, and to the octave line, mm and inches. */
  frontFromLine: { mm: 18.789082, in: 16.489082 },
  octaveFromLine: { mm: 25, in: 22.7 },
  width: 152.4,
  height: 34.925,
  /** The middle of a rounding of radius 2 lies 2 − √2 in from the corner of the box, both ways. */
  reliefIn: 0.585786,
} as const;

/**
 * The inside caul: 3 beyond the bridge all round, so that its corner lies 76.2 + 3 = 79.2 to the side and 3 ahead of the front
 * edge. From that corner, x to the right and y toward the tail: 79.2 ± 36.477051, and 646.169588 − 635.789082 and so on.
 */
export const CAUL = {
  across: 158.4,
  along: 40.925,
  hole: 2.0875,
  /** On the right of the drawing where the treble is, and on the left where the bass is. */
  trebleRight: { treble: [115.677051, 10.380506], bass: [42.722949, 13.597579] },
  trebleLeft: { treble: [42.722949, 10.380506], bass: [115.677051, 13.597579] },
  /** Groove for a brace 8 wide along x = +30 with 1.5 of room: 79.2 + 30 ± (4 + 1.5), and its mirror image. */
  grooveRight: [103.7, 114.7],
  grooveLeft: [43.7, 54.7],
  /** √(40.925² + 28.575²): what the soundhole must pass. */
  diagonal: 49.913788,
} as const;

/**
 * A rim of 1/8 in all round a rectangle of 6 × 1 in with two holes of 1/16 in, no pins: 5.75 · 0.75 · 645.16 − 2 π/4 · 1.5875²
 * = 2778.29 is glued, (6 − 5.75 · 0.75) · 645.16 = 1088.71 is not: 1088.71/3867.00 = 28.15 %.
 */
export const RIM = { glue: '2778 mm²', lost: '1089 mm²', share: '28.2 %', glueInches: '4.31 in²' } as const;

/**
 * Hatching of a rectangle 100 × 20 with its corner at the origin, lines 4 apart square to themselves on a grid through the
 * origin: they meet the axis y = 0 every 4√2 = 5.656854, from −20 (3 lines on the left side) to 100 (17 with the one through
 * the corner), the corners themselves left out as points: −3 … 17. A line that crosses from foot to top is 20√2 long.
 */
export const HATCH = { lines: 21, whole: 28.284271 } as const;

/**
 * Clamping cauls on a bridge 9.525 thick with a face of radius 400, wings from 43 to the tips at 76.2, 8 falling to 4: the
 * caul stands 9.525 + 20 = 29.525 over the sole, its underside falls 400 − √(400² − 42²) = 2.211111 to its ends at 43 − 1; the
 * wing caul begins at 44 where the wing is 8 − 4 · 1/33.2 = 7.879518. Dome of 28 ft = 8534.4: 0.367 at 79.2.
 */
export const CLAMP = {
  level: 29.525,
  centreHalf: 42,
  fall: 2.211111,
  wingBegin: 44,
  wingAtBegin: 7.879518,
  tip: 76.2,
  wingAtTip: 4,
  domeFall: 0.367499,
} as const;
