/**
 * Gauge ends and cards, worked by hand from a steel-string of scale 645: strings over 54, compensation 1.5875 and 3.96875 to
 * the break point, slot 76.2 × 3.175 with round ends 7.4 behind the front edge, belly bridge 152.4 × 34.925, nut 46 with
 * margins of 3.
 *
 * break point   645 + (1.5875 + 3.96875)/2 = 647.778125; slant m = (1.5875 − 3.96875)/54 = −0.0440972, s = √(1 + m²) = 1.00097181
 * slot front    647.778125 − 1.5875 s = 646.189082; at the strings ∓27 m: 644.998458 treble, 647.379707 bass
 * square line   front edge 638.789 − 15 = 623.789: 620
 */
export const GAUGE = {
  /** From the square line to the slot front and to the break point: treble, centre, bass. */
  slotFront: { treble: 24.998458, centre: 26.189082, bass: 27.379707 },
  breakPoint: { treble: 26.5875, centre: 27.778125, bass: 28.96875 },
  /** Half the slot along itself is 38.1; across, its round ends reach 36.5125/s + 1.5875 = 38.064551, and 7 of piece beside. */
  pieceHalf: 45.064551,
  rightTable: ['647.4', '646.2', '645.0'],
  leftTable: ['645.0', '646.2', '647.4'],
} as const;

/** Walked on from the 12th fret at 322.5: 645 − 322.5, and the break points beyond it. With the nut 0.5 nearer, 322. */
export const STICK = {
  octave: '322.5',
  breakTreble: { figure: '324.1', beyond: 1.5875 },
  breakBass: { figure: '326.5', beyond: 3.96875 },
  movedTwelfth: '322.0',
} as const;

/**
 * Outer string 0.3048 thick, 3 in from the edge: its centre 3.1524 in. The bass 1.3462 thick: 46 − 3.6731 = 42.3269. Even
 * centres: (42.3269 − 3.1524)/5 = 7.8349. Along the saddle 54 s = 54.052478, and its fifth.
 */
export const SPACING = {
  nutTreble: 19.8476,
  nutBass: -19.3269,
  fromEnd: ['3.2', '11.0', '18.8', '26.7', '34.5', '42.3'],
  saddleSpan: 54.052478,
  fromFirst: ['0.0', '10.8', '21.6', '32.4', '43.2', '54.1'],
} as const;

/**
 * Slot ends at ±38.1/s = ±38.063012: 7.4 ± 38.063012 m = 5.721527 and 9.078473; the back wall 3.175 s = 3.178085 farther.
 * Fence for a cutter of 3.175 and a base of 45: 45 s − 7.4 − 1.5875 s = 36.054689 on the centreline, ∓76.2 m at the ends of the
 * bridge: 39.414896 treble, 32.694482 bass. A cutter of 2: (2 − 3.175)/2 off the wall, so the front pass is 0.5875 s = 0.588071
 * farther ahead, the back pass as much behind.
 */
export const SLOT = {
  walls: { treble: ['5.72', '8.90'], centre: ['7.40', '10.58'], bass: ['9.08', '12.26'] },
  onePass: ['39.41', '32.69'],
  frontPass: ['40.00', '33.28'],
  backPass: ['38.83', '32.11'],
} as const;

/** 3/16 in = 4.7625; #12 is 0.189 in = 4.8006; (5.4 − 4.7625)/(2 tan 1.5°) = 0.6375/0.0523718 = 12.17. */
export const DRILLS_ASKED = { pins: ['3/16 in', '#12', 'none', '4.8 mm'], reamer: '12.2 mm' } as const;

/**
 * Straightedge 1 over the bridge, slot 6.5 deep. Relief 0.15 between frets 1 and 14 dips 0.058481 at the 12th. String 1: 0.3 +
 * (1.9 − 0.058481 − 0.3) · 646.5875/322.5 = 3.390626; string 6: 0.4 + (2.5 − 0.058481 − 0.4) · 648.96875/322.5 = 4.508161;
 * 1 more over the bridge, 6.5 more whole.
 */
export const HEIGHTS = { first: ['3.4', '4.4', '10.9'], last: ['4.5', '5.5', '12.0'] } as const;

/** A dome of 28 ft = 8534.4 falls R − √(R² − 76.2²) = 0.340185 from the centre to the tips of a bridge 152.4 long. */
export const SOLE_CARD = { half: 76.2, fall: 0.340185 } as const;
