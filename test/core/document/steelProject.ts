import type { Bridge, Instrument, InstrumentString, Project } from '../../../src/core/document/types';
import { WORKED_STRINGS } from '../../reference/intonation-worked';

const GAUGES = [0.012, 0.016, 0.024, 0.032, 0.042, 0.053];
const NAMES = ['E', 'B', 'G', 'D', 'A', 'E'];

/** A string of 0.012 in steel, pitched E4, with what matters to a test changed. */
const stringWith = (changes: Partial<InstrumentString>): InstrumentString => ({
  id: 's1',
  course: 1,
  name: 'E',
  frequency: 329.6276,
  diameter: 0.3048,
  wound: false,
  massPerLength: 0.5697,
  elastic: { kind: 'core', coreDiameter: 0.3048, coreShape: 'round', modulus: 200 },
  source: 'a test',
  ...changes,
});

/** Plain single strings of these diameters, string 1 first, called by their numbers. */
export const plainStrings = (diameters: readonly number[]): readonly InstrumentString[] =>
  diameters.map((diameter, index) =>
    stringWith({ id: `s${index + 1}`, course: index + 1, name: `${index + 1}`, diameter }),
  );

/** Mass apart from the core, as a project keeps them. */
const workedStrings = WORKED_STRINGS.map(({ frequency, elastic: { massPerLength, ...elastic } }, index) =>
  stringWith({
    id: `s${index + 1}`,
    course: index + 1,
    name: NAMES[index] ?? '',
    frequency,
    diameter: (GAUGES[index] ?? 0) * 25.4,
    wound: index > 1,
    massPerLength,
    elastic,
  }),
);

/**
 * An invented steel-string, every figure written here or in the worked example of intonation: scale 645, strings over 54,
 * slot 1/8 in, compensation 1/16 and 5/32 in.
 */
export const steelProject: Project = {
  format: 'saddlemark-project',
  version: 1,
  id: 'p1',
  revision: 3,
  about: {
    name: 'Plain steel',
    notes: '',
    created: '2026-01-02T03:04:05Z',
    changed: '2026-01-02T03:04:05Z',
    parent: null,
    pictures: [],
  },
  instrument: {
    hand: 'right',
    frets: { count: 20, bodyJoin: 14 },
    widths: { nut: 46, twelfth: 57, last: null },
    boardRadius: null,
    nut: { datum: 'front', offset: 0, face: 0 },
    scale: { from: 'entered', entered: 645, readings: [] },
    margins: { treble: 3, bass: 3 },
    gapRule: 'equal-centres',
    pairGap: 2,
    spread: { from: 'own', own: 54 },
    seamOffset: 0,
  },
  strings: workedStrings,
  setup: {
    action: { treble: 1.9, bass: 2.5 },
    nutHeight: { treble: 0.3, bass: 0.4 },
    relief: 0.15,
    reliefFrets: { from: 1, to: 14 },
    fingerDistance: 0,
    pushDown: 0,
  },
  compensation: {
    by: 'rule',
    rule: { treble: 1.5875, bass: 3.96875, reach: 'break-point', source: '' },
    own: {},
    fit: { firstFret: 1, lastFret: 12, match: 'range', nut: 'stays', line: 'least-squares' },
    learned: null,
  },
  bridge: {
    outline: {
      shape: 'belly',
      parameters: { length: 152.4, wing: 25.4, full: 34.925, belly: 104, shoulder: 40, corner: 2 },
    },
    slot: {
      fromFront: 7.4,
      length: 76.2,
      width: 3.175,
      ends: 'round',
      run: 'stopped',
      crown: 0.5,
      depth: 6.5,
      slant: null,
    },
    pins: {
      from: 9.525,
      spread: 54,
      row: 'parallel',
      hole: 4.7625,
      stagger: 0,
      taper: 3,
      underHead: 5.4,
      rise: 0,
      ramp: null,
    },
    locating: { site: 'slot-ends', drill: 1.5875, points: null, clearance: 0.5 },
    ties: null,
    cutting: null,
    sole: null,
    thickness: 9.525,
    rim: 0,
    density: 870,
  },
  height: { kind: 'steel', straightedge: null, pickup: 0, run: 11.1 },
  audit: {
    from: 'nut',
    treble: null,
    bass: null,
    centsTreble: null,
    centsBass: null,
    actionTreble: null,
    actionBass: null,
    saddleThickness: 3.175,
    crown: 1.6,
    slotWidth: 3.175,
    pinSpread: null,
    pinsFromSlot: null,
    pinsToBack: null,
    ahead: null,
  },
  body: null,
  repair: null,
  dimensions: [],
  sheets: { chosen: ['tape-down'] },
  doubts: {},
  limits: {},
  build: null,
};

type Group = 'instrument' | 'bridge' | 'compensation' | 'setup' | 'height' | 'audit';

interface Groups extends Record<Group, object> {
  readonly instrument: Instrument;
  readonly bridge: Bridge;
  readonly compensation: Project['compensation'];
  readonly setup: Project['setup'];
  readonly height: Project['height'];
  readonly audit: Project['audit'];
}

/** The project with other figures in some of its groups. */
export const steelWith = (changes: { readonly [Name in Group]?: Partial<Groups[Name]> }): Project => ({
  ...steelProject,
  ...Object.fromEntries(
    Object.entries(changes).map(([name, change]) => [name, { ...steelProject[name as Group], ...change }]),
  ),
});
