import type { SaddlePlace, StringCompensation } from '../../../../src/core/bridge/types';

const string = (
  name: string,
  x: number,
  line: number,
  wanted: number,
  left: number,
  model: StringCompensation['model'] = null,
): StringCompensation => ({
  id: `id-${x}`,
  name,
  x,
  wanted,
  line,
  miss: line - wanted,
  cents: 0,
  crown: { share: 0.5, fromFace: 1.5, reached: left === 0, shaped: 1.5, left },
  centsLeft: 0,
  model,
});

/** Octave line of `smallSaddle`, mm. */
export const SMALL_OCTAVE = 650;

/** Three strings 20 apart on a line 2 mm behind the octave line at the centreline, 1 mm more for each 20 mm to the bass. */
export const smallSaddle: SaddlePlace = {
  centre: 652,
  slope: -0.05,
  strings: [
    string('E', 20, 1, 1.1, 0),
    string('B', 0, 2, 3.25, -0.25, {
      setback: 2.2,
      sigma: 0.5,
      crown: { share: 0.5, fromFace: 1.5, reached: true, shaped: 1.5, left: 0 },
    }),
    string('G', -20, 3, 2.5, 0),
  ],
};
