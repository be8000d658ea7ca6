import { type Issue, issue } from '../result';
import type { Elastic, Setback, Setup, StringSpec } from './types';

const HIGHEST_FRET = 48; // four octaves; above any fretboard

const above0 = (path: string, value: number): Issue[] =>
  value > 0 && Number.isFinite(value)
    ? []
    : [issue(path, 'intonation.not-above-0', `expected a number above 0, got ${value}`)];
const from0 = (path: string, value: number): Issue[] =>
  value >= 0 && Number.isFinite(value) ? [] : [issue(path, 'intonation.below-0', `expected 0 or more, got ${value}`)];
const finite = (path: string, value: number): Issue[] =>
  Number.isFinite(value) ? [] : [issue(path, 'intonation.not-a-number', `expected a number, got ${value}`)];

function checkElastic(elastic: Elastic): Issue[] {
  if (elastic.kind === 'core') {
    return [
      ...above0('string.elastic.massPerLength', elastic.massPerLength),
      ...above0('string.elastic.coreDiameter', elastic.coreDiameter),
      ...above0('string.elastic.modulus', elastic.modulus),
    ];
  }
  return [
    ...from0('string.elastic.kappa', elastic.kappa),
    ...from0('string.elastic.b0', elastic.b0),
    ...(elastic.at
      ? [
          ...above0('string.elastic.at.scaleLength', elastic.at.scaleLength),
          ...above0('string.elastic.at.frequency', elastic.at.frequency),
        ]
      : []),
  ];
}

function checkSetup(setup: Setup): Issue[] {
  const [first, last] = setup.reliefFrets;
  const ordered = Number.isFinite(first) && Number.isFinite(last) && first >= 0 && last > first;
  return [
    ...above0('setup.scaleLength', setup.scaleLength),
    ...from0('setup.nutHeight', setup.nutHeight),
    ...from0('setup.action', setup.action),
    ...finite('setup.relief', setup.relief),
    ...(ordered
      ? []
      : [
          issue(
            'setup.reliefFrets',
            'intonation.relief-frets',
            `expected two frets, the lower first, got ${first} and ${last}`,
          ),
        ]),
    ...from0('setup.fingerDistance', setup.fingerDistance),
    ...from0('setup.pushDown', setup.pushDown ?? 0),
  ];
}

/** Everything that keeps the model from answering for this string, setup and frets; empty when nothing does. */
export function checkIntonation(string: StringSpec, setup: Setup, frets: readonly number[]): readonly Issue[] {
  return [
    ...above0('string.frequency', string.frequency),
    ...checkElastic(string.elastic),
    ...checkSetup(setup),
    ...frets.flatMap((fret, i) =>
      Number.isInteger(fret) && fret >= 1 && fret <= HIGHEST_FRET
        ? []
        : [issue(`frets.${i}`, 'intonation.fret', `expected a whole fret from 1 to ${HIGHEST_FRET}, got ${fret}`)],
    ),
  ];
}

/**
 * A setback that the model cannot answer for: saddle not beyond the frets, or a nut moved by a fifth of the first fret's
 * distance (the finger takes at most four fifths, and string must be left between it and the nut).
 */
export function checkSetback(setup: Setup, setback: Setback, frets: readonly number[]): readonly Issue[] {
  const distance = (fret: number): number => setup.scaleLength * (1 - 2 ** (-fret / 12));
  const highest = Math.max(0, ...frets);
  const { saddle, nut } = setback;
  return [
    ...(saddle > distance(highest) - setup.scaleLength && saddle < setup.scaleLength
      ? []
      : [issue('setback.saddle', 'intonation.saddle', `expected the saddle beyond fret ${highest}, got ${saddle}`)]),
    ...(Math.abs(nut) < distance(1) / 5
      ? []
      : [
          issue('setback.nut', 'intonation.nut', `expected less than a fifth of the first fret's distance, got ${nut}`),
        ]),
  ];
}
