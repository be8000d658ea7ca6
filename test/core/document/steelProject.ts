import type { Bridge, Instrument, Project } from '../../../src/core/document/types';

const GAUGES = [0.012, 0.016, 0.024, 0.032, 0.042, 0.053];
const NAMES = ['E', 'B', 'G', 'D', 'A', 'E'];

/** An invented steel-string, every figure written here: scale 645, strings over 54, slot 1/8 in, compensation 1/16 and 5/32 in. */
export const steelProject: Project = {
  format: 'saddlemark-project',
  version: 1,
  id: 'p1',
  revision: 3,
  about: { name: 'Plain steel', notes: '', created: '2026-01-02T03:04:05Z', changed: '2026-01-02T03:04:05Z' },
  instrument: {
    hand: 'right',
    frets: { bodyJoin: 14 },
    widths: { nut: 46, twelfth: 57 },
    nut: { datum: 'front', offset: 0, face: 0 },
    scale: { from: 'entered', entered: 645, readings: [] },
    margins: { treble: 3, bass: 3 },
    gapRule: 'equal-centres',
    spread: { from: 'own', own: 54 },
  },
  strings: GAUGES.map((gauge, index) => ({ id: `s${index + 1}`, name: NAMES[index] ?? '', diameter: gauge * 25.4 })),
  setup: { action: { treble: 1.9, bass: 2.5 }, relief: 0.15 },
  compensation: {
    by: 'rule',
    rule: { treble: 1.5875, bass: 3.96875, reach: 'break-point', source: '' },
    own: {},
  },
  bridge: {
    outline: {
      shape: 'belly',
      parameters: { length: 152.4, wing: 25.4, full: 34.925, belly: 104, shoulder: 40, corner: 2 },
    },
    slot: { fromFront: 7.4, length: 76.2, width: 3.175, ends: 'round', crown: 0.5 },
    pins: { from: 9.525, spread: 54, row: 'parallel', hole: 4.7625 },
    locating: { site: 'slot-ends', drill: 1.5875 },
  },
};

/** The project with other groups of its instrument, bridge or compensation. */
export const steelWith = (changes: {
  readonly instrument?: Partial<Instrument>;
  readonly bridge?: Partial<Bridge>;
  readonly compensation?: Partial<Project['compensation']>;
}): Project => ({
  ...steelProject,
  ...(changes.instrument && { instrument: { ...steelProject.instrument, ...changes.instrument } }),
  ...(changes.bridge && { bridge: { ...steelProject.bridge, ...changes.bridge } }),
  ...(changes.compensation && { compensation: { ...steelProject.compensation, ...changes.compensation } }),
});
