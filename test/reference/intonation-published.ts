/**
 * Single figures printed in Anderson & Beausoleil, "Classical guitar intonation and compensation: The well-tempered
 * guitar", J. Acoust. Soc. Am. 156(1), 683 (2024), read in the authors' manuscript (printed digits may differ).
 * Conditions unless said otherwise: scale 650 mm, nut height b = 1, saddle above it c = 4, frets 1 to 12.
 */
export const PAPER = {
  /** Mean stretch over frets 1 to 12, times 24·X0², by b², b·c, c². */
  meanStretch: [77.9, 35.6, 5.82],
  /** Saddle setback from added tension, times 4·X0/κ, by b², b·c, c². */
  saddleBracket: [-9.848, 2, 1],
  /** Nut setback from added tension, times −2·X0/κ, by b², b·c. */
  nutBracket: [5.633, 1],
  /** κ = 51: −κ·X0/2 times the mean stretch, finger 0 and 10 mm behind the fret, mm. */
  simpleNut: { kappa: 51, atFret: -0.51, tenBehind: -0.57 },
  /** B0·X0 for a string of radius 0.43 mm and κ = 51; B0 and mm. */
  simpleSaddle: { kappa: 51, radius: 0.43, b0: 0.00236, saddle: 1.54 },
  /** Stretch at fret 1, finger 10 mm behind, saddle 1.9, nut −0.37. */
  firstStretch: 47e-6,
  /** Length part at fret 12, no setback, cents. */
  lengthPart: -0.17,
  /** Means and spreads over the paper's ordinary sets (the anomalous light set left out): radius, saddle, nut, mm. */
  means: { radius: [0.43, 0.08], saddle: [1.9, 0.4], nut: [-0.37, 0.03] },
  /** Saddle setback over string radius. */
  slope: [4.4, 0.2],
};

/**
 * Measured on a guitar, same paper: 652 mm, b = 1.4, c = 5.5, finger 10 mm behind, saddle −3.5, nut 0, set nylon normal.
 * Ranges in cents, read off as "4.5 to 5.75" and so on.
 */
export const MEASURED_GUITAR = {
  scaleLength: 652,
  nutHeight: 1.4,
  /** b + c/2. */
  action: 4.15,
  fingerDistance: 10,
  setback: { saddle: -3.5, nut: 0 },
  fret1: [4.5, 5.75],
  fret12: { thirdAndSixth: [18.5, 19.5], others: [15.75, 17.5] },
};

/**
 * Tension chart by R. Turner, Acoustic Guitar, December 2000, as transcribed at watchalan.com: scale 25.5 in, lb.
 * Unit weights, lb/in, as string makers' charts give them (from memory); those of .025 and .034 were recovered from an
 * independent evaluation of the same chart (32.804 and 34.666 lb). Notes in equal temperament on 440.
 */
export const TENSION_CHART = [
  { string: 'plain .014, D4', unitWeight: 0.00004342, frequency: 293.6648, pounds: 25.2 },
  { string: 'plain .016, B3', unitWeight: 0.00005671, frequency: 246.9417, pounds: 23.3 },
  { string: 'wound .025, G3', unitWeight: 0.00012686, frequency: 195.9977, pounds: 32.8 },
  { string: 'wound .034, D3', unitWeight: 0.00023887, frequency: 146.8324, pounds: 34.7 },
  { string: 'wound .047, G2', unitWeight: 0.00045289, frequency: 97.9989, pounds: 29.3 },
];

/**
 * Compensation in the trade, mm: [LE] larryeubanks.blogspot.com 2010/06, 1/16 in treble and 5/32 in bass;
 * [BYG] buildyourguitar.com, bridge placement, 0.15 in at mid-saddle for 635 to 654 mm; classical 12th fret to slot
 * front 327.0 on 650, an unattributed web article.
 */
export const RULES_OF_THUMB = { treble: 1.5875, bass: 3.96875, middle: 3.81, classical: 2.0 };
