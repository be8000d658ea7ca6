import { seededRandom } from '../numeric/seededRandom';
import { type Spread, spreadOf } from '../numeric/spreadOf';
import { fail, failed, ok, type Result } from '../result';
import { checkDoubts, doubtsInUse, type InputDoubts, inputDraft } from './doubtfulInputs';
import { fitSetback } from './fitSetback';
import { fretErrors } from './fretErrors';
import { fretGrid } from './fretGrid';
import { exactLaw } from './modelLaw';
import { dot, setbackGain } from './setbackGain';
import type { FitOptions, Setup, StringSpec } from './types';

/** What is sampled, for one string. */
export interface SetbackSampling {
  readonly string: StringSpec;
  readonly setup: Setup;
  readonly options: FitOptions;
  readonly doubts: InputDoubts;
  /** From 1 to 1,000,000. */
  readonly samples: number;
  /** Whole number: the same seed gives the same answer. */
  readonly seed: number;
}

/** How a saddle setback spreads, mm. */
export interface SetbackSpread extends Spread {
  /** Sorted, smallest first. */
  readonly sorted: Float64Array;
}

const MOST_SAMPLES = 1_000_000;

/**
 * Spread of a fitted saddle setback when every figure in doubt varies at once, normally and independently; a draw below
 * zero is folded back. Each sample is one Newton step from the central fit, with that fit's normal equations.
 *
 * A generator, so that a worker can show progress and stop: it yields the number of samples done after each chunk and
 * returns the answer. Bad input ends it at once with the issues.
 * @param chunk samples between two yields, 1 or more
 */
export function* monteCarloSetback(
  sampling: SetbackSampling,
  chunk = 5000,
): Generator<number, Result<SetbackSpread>, void> {
  const { string, setup, options, doubts, samples, seed } = sampling;
  const issues = checkDoubts(doubts);
  if (issues.length > 0) return failed(issues);
  if (!(Number.isInteger(samples) && samples >= 1 && samples <= MOST_SAMPLES)) {
    return fail('samples', 'sampling.samples', `expected a whole number from 1 to ${MOST_SAMPLES}, got ${samples}`);
  }
  if (!Number.isSafeInteger(seed)) return fail('seed', 'sampling.seed', `expected a whole number, got ${seed}`);
  const fitted = fitSetback(string, setup, options);
  if (!fitted.ok) return fitted;

  const { saddle, nut } = fitted.value;
  const draft = inputDraft(string, setup);
  const varied = doubtsInUse(string, setup, doubts).map(({ input, sigma }) => ({
    write: draft.writer(input),
    value: draft.read(input) as number,
    sigma,
  }));
  const grid = fretGrid(setup.scaleLength, setup.reliefFrets, options.frets);
  const gain = setbackGain(string, setup, grid, exactLaw, options.freeNut, saddle, nut).saddle;
  const errors = new Float64Array(options.frets.length);
  const sorted = new Float64Array(samples);
  const { normal } = seededRandom(seed);
  const size = Math.max(1, Math.floor(chunk));
  for (let i = 0; i < samples; i += 1) {
    for (const { write, value, sigma } of varied) write(value + sigma * normal());
    fretErrors(draft.string, draft.setup, grid, exactLaw, saddle, nut, errors);
    sorted[i] = saddle - dot(gain, errors);
    if ((i + 1) % size === 0) yield i + 1;
  }
  sorted.sort();
  return ok({ ...spreadOf(sorted), sorted });
}
