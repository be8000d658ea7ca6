import type { Compensation, Instrument, InstrumentString, PlayingSetup, Project, ShapeName } from '../document/types';
import { STRING_SETS } from './stringSets';
import { usualBridge } from './usualBridge';

/** A kind of instrument to start from; every figure can be changed, and measuring the instrument beats all of them. */
export interface Kind {
  readonly id: string;
  readonly name: string;
  readonly make: (id: string, now: string) => Project;
}

interface Start {
  readonly name: string;
  readonly shape: ShapeName;
  readonly stringSet: string;
  readonly instrument: Omit<Instrument, 'hand' | 'nut' | 'scale' | 'gapRule' | 'spread'>;
  readonly scaleLength: number;
  readonly spread: number;
  readonly setup: PlayingSetup;
  readonly rule: Compensation['rule'];
}

/** The strings of a set as a project keeps them: string 1 is "s1". */
export const stringsOfSet = (setId: string): readonly InstrumentString[] =>
  (STRING_SETS.find(({ id }) => id === setId)?.strings ?? []).map((string, index) => ({
    id: `s${index + 1}`,
    ...string,
  }));

const projectFrom = (start: Start, id: string, now: string): Project => ({
  format: 'saddlemark-project',
  version: 1,
  id,
  revision: 0,
  about: { name: start.name, notes: '', created: now, changed: now },
  instrument: {
    ...start.instrument,
    hand: 'right',
    nut: { datum: 'front', offset: 0, face: 0 },
    scale: { from: 'entered', entered: start.scaleLength, readings: [] },
    gapRule: 'equal-gaps',
    spread: { from: 'own', own: start.spread },
  },
  strings: stringsOfSet(start.stringSet),
  setup: start.setup,
  compensation: { by: 'rule', rule: start.rule, own: {} },
  bridge: usualBridge(start.shape),
});

const STARTS: Readonly<Record<string, { readonly kind: string; readonly start: Start }>> = {
  'steel-string': {
    kind: 'Steel-string guitar',
    start: {
      name: 'New steel-string',
      shape: 'belly',
      stringSet: 'steel-12-53',
      instrument: {
        frets: { bodyJoin: 14 },
        widths: { nut: 44.45, twelfth: 55.5 },
        margins: { treble: 3.2, bass: 3.2 },
      },
      scaleLength: 645,
      spread: 54,
      setup: { action: { treble: 1.9, bass: 2.5 }, relief: 0.15 },
      rule: {
        treble: 1.5875,
        bass: 3.96875,
        reach: 'break-point',
        source: '1/16 in treble, 5/32 in bass: larryeubanks.blogspot.com, June 2010',
      },
    },
  },
  classical: {
    kind: 'Classical guitar',
    start: {
      name: 'New classical',
      shape: 'tie-block',
      stringSet: 'nylon-normal',
      instrument: {
        frets: { bodyJoin: 12 },
        widths: { nut: 52, twelfth: 62 },
        margins: { treble: 4, bass: 4 },
      },
      scaleLength: 650,
      spread: 58,
      setup: { action: { treble: 3, bass: 4 }, relief: 0.1 },
      rule: {
        treble: 2,
        bass: 2,
        reach: 'slot-front',
        source: '12th fret to slot front 327.0 mm on 650: an unattributed web article',
      },
    },
  },
  'tenor-ukulele': {
    kind: 'Tenor ukulele',
    start: {
      name: 'New tenor ukulele',
      shape: 'small-ukulele',
      stringSet: 'ukulele-tenor',
      instrument: {
        frets: { bodyJoin: 14 },
        widths: { nut: 36, twelfth: 46 },
        margins: { treble: 3.5, bass: 3.5 },
      },
      scaleLength: 432,
      spread: 42,
      setup: { action: { treble: 2.4, bass: 2.6 }, relief: 0.05 },
      rule: {
        treble: 3.175,
        bass: 3.175,
        reach: 'slot-front',
        source: '1/8 in to the leading edge on a 17 in scale: ukuleleguild.tripod.com, November 2001',
      },
    },
  },
};

/** The kinds of instrument to start from. */
export const KINDS: readonly Kind[] = Object.entries(STARTS).map(([id, { kind, start }]) => ({
  id,
  name: kind,
  make: (projectId, now) => projectFrom(start, projectId, now),
}));
