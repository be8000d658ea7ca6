import { combineUncertainty } from '../numeric/combineUncertainty';
import { failed, ok, type Result } from '../result';
import { checkDoubts, type DoubtfulInput, doubtsInUse, type InputDoubts, inputDraft } from './doubtfulInputs';
import { fitSetback } from './fitSetback';
import { fretErrors } from './fretErrors';
import { fretGrid } from './fretGrid';
import { exactLaw } from './modelLaw';
import { dot, setbackGain } from './setbackGain';
import type { FitOptions, SetbackFit, Setup, StringSpec } from './types';

/** What one figure's doubt does to a fitted saddle setback. */
export interface DoubtShare {
  readonly input: DoubtfulInput;
  /** Change of the saddle setback when the figure is one sigma higher, mm; + is farther from the nut. */
  readonly shift: number;
}

/** A fitted setback, how sure it is, and why not surer. */
export interface SetbackDoubt {
  readonly fit: SetbackFit;
  /** One sigma of the saddle setback, mm: root of the summed squares of the shares. */
  readonly sigma: number;
  /** Largest first: the first is what to measure again. */
  readonly shares: readonly DoubtShare[];
}

const SMALLEST_STEP = 1e-9;

/**
 * How the doubts of single figures carry to the fitted saddle setback, to first order.
 *
 * Each figure is set one sigma up and down (a figure that cannot go below 0 only as far as 0) and the errors' change at
 * the fitted setback is turned into a change of setback by the fit's own normal equations; half the difference counts.
 * Doubts of different figures are taken as independent.
 * @param doubts one sigma each, in the figure's own unit
 */
export function setbackSensitivity(
  string: StringSpec,
  setup: Setup,
  options: FitOptions,
  doubts: InputDoubts,
): Result<SetbackDoubt> {
  const issues = checkDoubts(doubts);
  const fitted = fitSetback(string, setup, options);
  if (!fitted.ok) return failed([...issues, ...fitted.issues]);
  if (issues.length > 0) return failed(issues);
  const fit = fitted.value;
  const grid = fretGrid(setup.scaleLength, setup.reliefFrets, options.frets);
  const gain = setbackGain(string, setup, grid, exactLaw, options.freeNut, fit.saddle, fit.nut).saddle;
  const draft = inputDraft(string, setup);
  const errors = new Float64Array(options.frets.length);
  const saddleWith = (write: (value: number) => void, value: number): number => {
    write(value);
    fretErrors(draft.string, draft.setup, grid, exactLaw, fit.saddle, fit.nut, errors);
    return fit.saddle - dot(gain, errors);
  };
  const shares = doubtsInUse(string, setup, doubts).map(({ input, sigma }) => {
    const value = draft.read(input) as number;
    const write = draft.writer(input);
    // A doubt below the rounding of the figure itself would leave nothing to divide by.
    const step = Math.max(sigma, 1e-6 * Math.abs(value), SMALLEST_STEP);
    const low = input === 'relief' ? value - step : Math.max(0.01 * value, value - step);
    const high = value + step;
    const shift = ((saddleWith(write, high) - saddleWith(write, low)) / (high - low)) * sigma;
    write(value);
    return { input, shift };
  });
  shares.sort((a, b) => Math.abs(b.shift) - Math.abs(a.shift));
  return ok({ fit, sigma: combineUncertainty(shares.map(({ shift }) => ({ effect: shift }))).sigma, shares });
}
