/**
 * Worked example: light steel strings on 645 mm, six strings from the treble.
 *
 * Inputs: unit weights as makers' charts give them (from memory), core sizes published for a light set
 * (osthoffguitars.com) matched to gauges by estimate, 200 GPa from memory, action and nut height linear by string.
 * Expected values: an independent evaluation of the equations of Anderson & Beausoleil, JASA 156(1), 683 (2024), made
 * apart from this project's code; not published and not measured.
 */
const INCH = 25.4;

/** Hz, equal temperament on 440. */
const FREQUENCIES = [329.6276, 246.9417, 195.9977, 146.8324, 110, 82.4069];
/** g/m. */
const MASSES = [0.5697, 1.0127, 2.0862, 3.7534, 6.5578, 10.1723];
/** Core diameters, in. */
const CORES = [0.012, 0.016, 0.013, 0.015, 0.016, 0.0175];

export const WORKED_STRINGS = ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'].map((name, i) => ({
  name,
  frequency: FREQUENCIES[i] as number,
  elastic: {
    kind: 'core' as const,
    massPerLength: MASSES[i] as number,
    coreDiameter: (CORES[i] as number) * INCH,
    coreShape: 'round' as const,
    modulus: 200,
  },
}));

export const WORKED_SETUPS = [0, 1, 2, 3, 4, 5].map((i) => ({
  scaleLength: 645,
  nutHeight: 0.3 + (0.1 * i) / 5,
  action: 1.9 + (0.6 * i) / 5,
  relief: 0.15,
  reliefFrets: [1, 14] as const,
  fingerDistance: 0,
  pushDown: 0,
}));

/** Spread of the outer strings at the saddle, mm, equal spacing; treble at +27. */
export const WORKED_SPREAD = 54;

export const WORKED = {
  tension: [103.0, 102.8, 133.4, 134.7, 132.1, 115.0],
  kappa: [141.7, 252.4, 128.4, 169.3, 196.5, 270.0],
  /** √(E·I/T0), mm. */
  bendingLength: [0.907, 1.614, 0.935, 1.239, 1.424, 1.826],
  octave: [1.682, 3.197, 1.822, 2.551, 3.112, 4.382],
  fit: [1.818, 3.458, 1.97, 2.762, 3.377, 4.772],
  fitRms: [0.3, 0.59, 0.34, 0.49, 0.62, 0.93],
  fitFret1: [0.47, 0.94, 0.55, 0.81, 1.04, 1.58],
  fitFret12: [-0.37, -0.7, -0.4, -0.57, -0.71, -1.05],
  freeSaddle: [1.495, 2.827, 1.608, 2.239, 2.713, 3.785],
  freeNut: [-0.216, -0.426, -0.243, -0.352, -0.448, -0.671],
  fitLine: {
    centre: 3.026,
    angleDeg: 2.32,
    misses: [0.114, -1.088, 0.837, 0.483, 0.306, -0.652],
    rms: [0.35, 1.77, 1.32, 0.89, 0.78, 1.36],
    fret12: [-0.67, 2.24, -2.65, -1.87, -1.54, 0.71],
  },
  octaveLine: {
    centre: 2.791,
    angleDeg: 2.117,
    misses: [0.111, -1.005, 0.769, 0.439, 0.278, -0.593],
    fret12: [-0.3, 2.72, -2.07, -1.18, -0.75, 1.6],
  },
  minimax: {
    fit: { centre: 3.042, angleDeg: 1.742, worst: 0.908 },
    octave: { centre: 2.805, angleDeg: 1.571, worst: 0.836 },
  },
  /** Saddle bought slotted at 3°, laid through the fit by least squares; worked by hand. */
  threeDegrees: { slope: -0.05241, centre: 3.0262, misses: [-0.207, -1.281, 0.773, 0.547, 0.498, -0.331] },
};

/** Parts of the error at no setback, cents, and the mean total over frets 1 to 12 (same independent evaluation). */
export const WORKED_PARTS = {
  length: [-0.08, -0.09, -0.1, -0.11, -0.12, -0.14],
  tension: [2.13, 4.28, 2.44, 3.59, 4.62, 6.99],
  density: [0.015, 0.017, 0.019, 0.021, 0.024, 0.026],
  bending: [2.48, 4.49, 2.56, 3.42, 3.94, 5.08],
  total: [4.55, 8.69, 4.93, 6.92, 8.46, 11.96],
  meanTension: [1.37, 2.73, 1.56, 2.28, 2.92, 4.4],
  meanBending: [1.2, 2.16, 1.24, 1.65, 1.9, 2.45],
  meanTotal: [2.54, 4.87, 2.76, 3.89, 4.77, 6.81],
  fret1: [0.77, 1.52, 0.87, 1.26, 1.6, 2.39],
};

/** Change of the saddle setback, mm, for a change of one figure: octave match, then fit 1 to 12 (same evaluation). */
export const WORKED_CHANGES: readonly {
  readonly change:
    | 'action'
    | 'nutHeight'
    | 'relief'
    | 'coreDiameter'
    | 'modulus'
    | 'fingerDistance'
    | 'hex'
    | 'pushDown';
  readonly by: number;
  readonly octave: readonly number[];
  readonly fit: readonly number[];
}[] = [
  { change: 'action', by: 0.25, octave: [0.21, 0.4, 0.21, 0.3, 0.36, 0.51], fit: [0.23, 0.43, 0.23, 0.32, 0.39, 0.55] },
  { change: 'nutHeight', by: 0.1, octave: [0, 0, 0, 0, 0, 0], fit: [0.03, 0.05, 0.03, 0.04, 0.05, 0.07] },
  { change: 'relief', by: 0.15, octave: [0, 0, 0, 0, 0, 0], fit: [0.07, 0.13, 0.07, 0.1, 0.12, 0.17] },
  {
    change: 'coreDiameter',
    by: 0.0254,
    octave: [0.3, 0.42, 0.3, 0.36, 0.41, 0.52],
    fit: [0.32, 0.45, 0.32, 0.38, 0.44, 0.56],
  },
  { change: 'modulus', by: 10, octave: [0.06, 0.12, 0.07, 0.1, 0.12, 0.17], fit: [0.07, 0.13, 0.08, 0.11, 0.13, 0.19] },
  {
    change: 'fingerDistance',
    by: 10,
    octave: [0.05, 0.1, 0.06, 0.08, 0.11, 0.16],
    fit: [0.07, 0.13, 0.08, 0.11, 0.14, 0.21],
  },
  /** Quoted core taken as the width across the flats, on the wound strings. */
  { change: 'hex', by: 0, octave: [0, 0, 0.19, 0.27, 0.33, 0.46], fit: [0, 0, 0.21, 0.29, 0.36, 0.5] },
  /** With the finger 8 mm behind the fret. */
  {
    change: 'pushDown',
    by: 0.3,
    octave: [0.63, 1.11, 0.57, 0.75, 0.86, 1.17],
    fit: [0.9, 1.59, 0.82, 1.07, 1.24, 1.69],
  },
];
