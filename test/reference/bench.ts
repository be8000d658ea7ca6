/** What a maker would try in the first hour; hand arithmetic beside each figure. Invented instruments, mm. */

/** Scale 645, 1/16 in treble and 5/32 in bass over 54 mm, slot 1/8 in, crown in the middle; the same for either hand. */
export const LEFT_645 = {
  /** 645 + 1.5875, 645 + (1.5875 + 3.96875) / 2, 645 + 3.96875 */
  breakPoints: { treble: 646.5875, centre: 647.778125, bass: 648.96875 },
  /** atan(2.38125 / 54) */
  slantDegrees: 2.525,
  /** 647.778 − 1.5875 / cos 2.525° */
  slotFront: 646.189,
  /** 1.589 mm × 2.684 cents per mm */
  slotFrontCents: 4.27,
} as const;

/** Nut to 12th fret read three times with a rule in 64ths. */
export const READ_IN_64THS = {
  inches: [12 + 45 / 64, 12 + 11 / 16, 12 + 45 / 64],
  meanInches: 12.69792,
  scaleInches: 25.39583,
  scale: 645.054,
} as const;

/** Tie-block, scale 650, 12th fret to slot front 327.0, slot 2.5 wide. */
export const TIE_BLOCK_650 = {
  /** 325 + 327.0 */
  slotFront: 652,
  /** 652 + 1.25 */
  slotCentre: 653.25,
  /** 1.25 mm × 2.663 cents per mm */
  mixUpCents: 3.3,
} as const;

/** Zero fret, scale 628, centre compensation 3.5, nut face 4.5 behind the zero fret. */
export const ZERO_FRET_628 = {
  twelfth: 314,
  breakFromZeroFret: 631.5,
  breakFromNutFace: 636,
  /** 4.5 mm × 2.757 cents per mm */
  mixUpCents: 12.4,
} as const;

/** Body join at 12, scale 632, board 46 at the nut and 57 at the 12th, bridge front 625.8, square-ended, 152.4 long. */
export const SQUARE_632 = {
  /** √(309.8² + 47.7²), √(309.8² + 104.7²), √(625.8² + 53.2²), √(625.8² + 99.2²) */
  fromTwelfth: { sameSide: 313.45, across: 327.01 },
  fromNut: { sameSide: 628.06, across: 633.61 },
} as const;

/**
 * The template sketch: scale 632.0, slant of 3/32 in over 2 5/16 in, strings over 54, slot 1/8 in. Distances from the nut
 * and from the 12th fret (316.0), to one decimal. Break points 632 + 2.778125 ∓ 27 · 2.38125 / 58.7375; slot front
 * 634.778 − 1.5875 / cos 2.3215°; bridge front by the sketch.
 */
export const SKETCH_632 = {
  slantDegrees: 2.32,
  rule: { treble: 1.683531, bass: 3.872719 },
  rows: {
    'Break point, centre': ['634.8', '318.8'],
    'Break point, treble E': ['633.7', '317.7'],
    'Break point, bass E': ['635.9', '319.9'],
    'Slot centre': ['634.8', '318.8'],
    'Slot front, centre': ['633.2', '317.2'],
    'Bridge front, centre': ['625.8', '309.8'],
  },
} as const;

/** Twelve strings in pairs 2.0 apart over 55.0 outer, equal centres of the courses. */
export const TWELVE_55 = {
  /** (55 − 2) / 5 */
  coursePitch: 10.6,
  /** 27.5, less 2; less 10.6 for each course. */
  places: [27.5, 25.5, 16.9, 14.9, 6.3, 4.3, -4.3, -6.3, -14.9, -16.9, -25.5, -27.5],
} as const;

/** Nut 0.5, action 2.2 over the 12th, relief 0.15 between frets 1 and 14, scale 645, one height for all strings. */
export const PROUD_645 = {
  /** 0.5 + 2 · (2.2 − 0.15·4·t(1 − t) − 0.5), t of the 12th between frets 1 and 14 */
  atSaddle: 3.78,
  /** Airspace, and how far the saddle then stands up. */
  proud: [
    [0.4, 4.2],
    [1.6, 5.4],
  ],
} as const;

/** The worked example's fitted setbacks on the line with the least worst miss, 0.908 at 1.742°. */
export const CROWN_OF_WORKED = {
  /** 2 × 0.908 + 0.6 of land */
  needed: 2.42,
  /** 3/32 in just fails, 1/8 in passes. */
  fails: 2.38125,
  passes: 3.175,
} as const;
