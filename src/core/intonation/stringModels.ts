import type { Compensation, InstrumentString, PlayingSetup } from '../document/types';
import type { StringPlace } from '../instrument/types';
import { fail, failed, type Issue, ok, type Result } from '../result';
import { DOUBTFUL_INPUTS, type InputDoubts } from './doubtfulInputs';
import { type ModelledString, modelString } from './modelString';
import { specOf } from './specOf';
import { stringTension } from './stringTension';
import type { FitOptions, Setup, StringSpec } from './types';

/** One string of the instrument as the model takes it, and what the model says of it. */
export interface StringModel extends ModelledString {
  readonly id: string;
  readonly name: string;
  readonly spec: StringSpec;
  readonly setup: Setup;
  /** Open, N. */
  readonly tension: number;
}

/** The frets that a fit counts: the range, or the 12th alone. */
export const fitOptions = (fit: Compensation['fit']): FitOptions =>
  fit.match === 'octave'
    ? { frets: [12], freeNut: false }
    : {
        frets: Array.from(
          { length: Math.max(0, fit.lastFret - fit.firstFret + 1) },
          (_, index) => fit.firstFret + index,
        ),
        freeNut: fit.nut === 'moves',
      };

/** The set-up under one string: heights run evenly across from string 1 (share 1) to the last string (share 0). */
const setupUnder = (setup: PlayingSetup, scaleLength: number, share: number): Setup => ({
  scaleLength,
  nutHeight: setup.nutHeight.bass + share * (setup.nutHeight.treble - setup.nutHeight.bass),
  action: setup.action.bass + share * (setup.action.treble - setup.action.bass),
  relief: setup.relief,
  reliefFrets: [setup.reliefFrets.from, setup.reliefFrets.to],
  fingerDistance: setup.fingerDistance,
  pushDown: setup.pushDown,
});

const ownDoubts = (doubts: Readonly<Record<string, number>>): InputDoubts =>
  Object.fromEntries(DOUBTFUL_INPUTS.flatMap((input) => (doubts[input] === undefined ? [] : [[input, doubts[input]]])));

/** A reason why the model cannot take a string, at the field that a maker can change. */
const atField = (found: Issue, index: number, name: string): Issue => {
  const { path, message } = found;
  if (path.startsWith('frets'))
    return { ...found, path: 'compensation.fit.lastFret', message: `In tune over: ${message}.` };
  if (path !== 'string' && !path.startsWith('string.')) return { ...found, message: `Set-up: ${message}.` };
  const own = path.replace(/^string/, `strings.${index}`).replace('.elastic.massPerLength', '.massPerLength');
  return { ...found, path: own, message: `String ${index + 1} (${name}): ${message}.` };
};

/** What the stiff-string model says of every string, string 1 first. A string that it cannot take fails them all, by its name. */
export const stringModels = (
  strings: readonly InstrumentString[],
  places: readonly StringPlace[],
  scaleLength: number,
  setup: PlayingSetup,
  fit: Compensation['fit'],
  doubts: Readonly<Record<string, number>>,
): Result<readonly StringModel[]> => {
  const first = places[0]?.saddleX ?? 1;
  const last = places.at(-1)?.saddleX ?? 0;
  const options = fitOptions(fit);
  const own = ownDoubts(doubts);
  if (fit.match === 'range' && fit.lastFret < fit.firstFret)
    return fail('compensation.fit.lastFret', 'fit.range', 'The last fret of the range is not below its first.');
  const issues: Issue[] = [];
  const models: StringModel[] = [];
  for (const [index, string] of strings.entries()) {
    const x = places[index]?.saddleX ?? 0;
    const under = setupUnder(setup, scaleLength, first === last ? 1 : (x - last) / (first - last));
    const spec = specOf(string);
    const modelled = modelString(spec, under, options, own);
    if (modelled.ok) {
      const tension = stringTension(string.massPerLength, scaleLength, string.frequency);
      models.push({ ...modelled.value, id: string.id, name: string.name, spec, setup: under, tension });
    } else issues.push(...modelled.issues.map((each) => atField(each, index, string.name)));
  }
  return issues.length > 0 ? failed(issues) : ok(models);
};
