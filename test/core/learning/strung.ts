import type { StringUp } from '../../../src/core/document/buildTypes';
import { newBuild } from '../../../src/core/document/newBuild';
import type { Project } from '../../../src/core/document/types';
import { WORKED } from '../../reference/intonation-worked';
import { steelProject } from '../document/steelProject';

/** Where the strings of the worked example break over its straight saddle, mm behind the octave line, by string id. */
const WORKED_STOOD: Readonly<Record<string, number>> = Object.fromEntries(
  WORKED.fit.map((wanted, index) => [`s${index + 1}`, wanted + (WORKED.fitLine.misses[index] ?? 0)]),
);

/** Cents at the 12th fret by string id, string 1 first. */
export const atTwelfth = (cents: readonly number[]): StringUp['cents'] =>
  Object.fromEntries(cents.map((value, index) => [`s${index + 1}`, { '12': value }]));

/** A first string-up of the worked example on its straight saddle, with nothing read. */
export const stringUp = (changes: Partial<StringUp> = {}): StringUp => ({
  id: 'u1',
  at: '2026-03-01T09:00:00.000Z',
  stage: 'first',
  crown: 'straight',
  tuner: 1,
  cents: {},
  action: { treble: null, bass: null },
  relief: null,
  humidity: null,
  meter: '',
  note: '',
  predicted: {},
  stood: WORKED_STOOD,
  ...changes,
});

/** The worked example as an instrument with these string-ups. */
export const strung = (stringUps: readonly StringUp[], changes: Partial<Project> = {}): Project => ({
  ...steelProject,
  build: { ...newBuild(), serial: 'No. 1', stringUps },
  ...changes,
});
