import type { StringUp } from '../document/buildTypes';
import type { PlayingSetup, Project } from '../document/types';
import { boardOf } from '../instrument/boardOf';
import { scaleOf } from '../instrument/scaleOf';
import { stringPlaces } from '../instrument/stringPlaces';
import { centsWithSaddle } from '../intonation/modelString';
import { stringModels } from '../intonation/stringModels';
import { fail, ok, type Result } from '../result';
import { firstStringUp } from './firstStringUp';
import { readingsOf } from './readingsOf';
import { travelOfCents } from './travelOfCents';

/** One string of an instrument against the model. mm behind the octave line. */
export interface StringOutcome {
  /** What the model says, for the set-up that was planned. */
  readonly predicted: number;
  /** Found less predicted: + when the string wanted to break farther from the nut. Null when it was not read. */
  readonly error: number | null;
}

/** How one instrument came out at its first setting. */
export interface Outcome {
  /** Of the project. */
  readonly id: string;
  readonly name: string;
  readonly serial: string;
  /** Id of the string-up: a copy of the project has the same. */
  readonly stringUp: string;
  /** ISO 8601 instant of it. */
  readonly at: string;
  /** In the order of the strings. */
  readonly strings: readonly StringOutcome[];
}

const asPlanned = ({ action, relief }: StringUp): boolean =>
  action.treble === null && action.bass === null && relief === null;

/** The set-up with what was read in place of what was planned. */
const asRead = (setup: PlayingSetup, { action, relief }: StringUp): PlayingSetup => ({
  ...setup,
  action: { treble: action.treble ?? setup.action.treble, bass: action.bass ?? setup.action.bass },
  relief: relief ?? setup.relief,
});

/**
 * How an instrument came out against the model at its first setting: the cents read less those that the model gives for
 * where each string broke, with action and relief as read where they were, as travel of the break point.
 *
 * Codes: outcome.none when no first setting was read, and those of scaleOf, boardOf, stringPlaces and stringModels.
 */
export const outcomeOf = (project: Project): Result<Outcome> => {
  const { about, build, compensation, doubts, instrument, setup, strings } = project;
  const first = firstStringUp(build?.stringUps ?? []);
  if (build === null || first === null)
    return fail('build.stringUps', 'outcome.none', 'No cents were read at a first setting.');
  const scale = scaleOf(instrument);
  if (!scale.ok) return scale;
  const board = boardOf(instrument, scale.value);
  if (!board.ok) return board;
  const places = stringPlaces(instrument, strings, board.value);
  if (!places.ok) return places;
  const { scaleLength } = scale.value;
  const modelled = (heights: PlayingSetup) =>
    stringModels(strings, places.value, scaleLength, heights, compensation.fit, doubts);
  const planned = modelled(setup);
  const real = asPlanned(first) ? planned : modelled(asRead(setup, first));
  if (!planned.ok) return planned;
  if (!real.ok) return real;
  const outcomes = real.value.map(({ id, spec, setup: under }, index): StringOutcome => {
    const predicted = planned.value[index]?.saddle ?? 0;
    const readings = readingsOf(first, id);
    const stood = first.stood[id];
    if (stood === undefined || readings.length === 0) return { predicted, error: null };
    const expected = centsWithSaddle(
      spec,
      under,
      stood,
      readings.map(({ fret }) => fret),
    );
    const beyond = readings.map(({ fret, cents }, at) => ({ fret, cents: cents - (expected[at] ?? 0) }));
    return { predicted, error: travelOfCents(beyond, scaleLength, first.tuner)?.travel ?? null };
  });
  return ok({
    id: project.id,
    name: about.name,
    serial: build.serial,
    stringUp: first.id,
    at: first.at,
    strings: outcomes,
  });
};
