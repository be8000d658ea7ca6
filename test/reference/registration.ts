/** Registration of point sets in the plane, and old pin holes against new; mm. */

type Pairs = readonly (readonly [number, number])[];

interface Registration {
  readonly name: string;
  readonly source: string;
  readonly from: Pairs;
  readonly to: Pairs;
  readonly degrees: number;
  readonly shift: readonly [number, number];
  readonly rms: number;
  /** How far the figures above are written out. */
  readonly decimals: number;
}

export const REGISTRATIONS: readonly Registration[] = [
  {
    // The best match of all would be a reflection. Turn by the matrix [[3, 2], [−2, 3]] / √13, mean square 0.619755.
    name: 'the example of Umeyama 1991, without change of size',
    source: 'Umeyama, IEEE PAMI 13, 1991: from memory; its rigid figures computed apart from this project',
    from: [
      [0, 0],
      [1, 0],
      [0, 2],
    ],
    to: [
      [0, 0],
      [-1, 0],
      [0, 2],
    ],
    degrees: (-Math.atan2(2, 3) * 180) / Math.PI,
    shift: [-0.980484, 0.296867],
    rms: Math.sqrt(0.619755),
    decimals: 6,
  },
  {
    name: 'a rectangle turned by the angle of 3, 4 and 5',
    source: 'hand arithmetic: (x, y) goes to (0.8x − 0.6y + 12, 0.6x + 0.8y − 7)',
    from: [
      [0, 0],
      [100, 0],
      [100, 50],
      [0, 50],
    ],
    to: [
      [12, -7],
      [92, 53],
      [62, 93],
      [-18, 33],
    ],
    degrees: 36.869898,
    shift: [12, -7],
    rms: 0,
    decimals: 6,
  },
  {
    name: 'the same with errors of 0.3 and 0.4',
    source: 'computed apart from this project',
    from: [
      [0, 0],
      [100, 0],
      [100, 50],
      [0, 50],
    ],
    to: [
      [12.3, -7],
      [91.7, 53],
      [62, 93.4],
      [-18, 32.6],
    ],
    degrees: 37.0990795,
    shift: [12.2001984, -7.0995992],
    rms: 0.27386164,
    decimals: 7,
  },
];

/** Six holes in an even row over inches: how far each is off when both rows share their middle. By hand: k/5 of half the difference. */
export const SIX_HOLES = [
  {
    old: 2 + 3 / 16,
    drilled: 2 + 1 / 4,
    // (57.15 − 55.5625) / 2 = 0.79375, and 3/5 and 1/5 of it
    off: [0.79375, 0.47625, 0.15875, 0.15875, 0.47625, 0.79375],
    rms: 0.542,
    worst: 0.794,
  },
  {
    old: 2 + 3 / 16,
    drilled: 2 + 1 / 8,
    off: [0.79375, 0.47625, 0.15875, 0.15875, 0.47625, 0.79375],
    rms: 0.542,
    worst: 0.794,
  },
  {
    old: 2 + 1 / 8,
    drilled: 2 + 1 / 4,
    off: [1.5875, 0.9525, 0.3175, 0.3175, 0.9525, 1.5875],
    rms: 1.084,
    worst: 1.588,
  },
] as const;

/** Twelve strings, outer 55.0, pairs 2.0 apart: course pitch (55 − 2)/5 = 10.6, so 27.5, 25.5, 16.9, 14.9, 6.3, 4.3 and the like. */
export const TWELVE_ACROSS = [27.5, 25.5, 16.9, 14.9, 6.3, 4.3, -4.3, -6.3, -14.9, -16.9, -25.5, -27.5] as const;
