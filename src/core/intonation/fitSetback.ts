import { fail, failed, ok, type Result } from '../result';
import { checkIntonation, checkSetback } from './checkIntonation';
import { elasticAt } from './elasticAt';
import { fretErrors } from './fretErrors';
import { fretGrid } from './fretGrid';
import { exactLaw, type ModelLaw } from './modelLaw';
import { openLine } from './openLine';
import { dot, setbackGain } from './setbackGain';
import { setbackStart } from './setbackStart';
import type { FitOptions, SetbackFit, Setup, StringSpec } from './types';

const CLOSE_MM = 1e-8; // a step this short is below the rounding of the errors
const SHORT_MM = 1e-3;
const MOST_STEPS = 40;
const MOST_HALVINGS = 20;

/** A saddle or nut farther off than this belongs to no instrument, and the open string could shrink to nothing there. */
const within = ({ scaleLength }: Setup, saddle: number, nut: number): boolean =>
  Math.abs(saddle) < scaleLength / 2 && Math.abs(nut) < scaleLength / 4;

const NO_ANSWER = fail<SetbackFit>(
  'string',
  'fit.no-answer',
  'no setback balances this string; check mass, pitch, core, action and nut height',
);

/** `fitSetback` with the law named, so that published evaluations can be repeated. */
export function fitSetbackBy(law: ModelLaw, string: StringSpec, setup: Setup, options: FitOptions): Result<SetbackFit> {
  const { frets, freeNut } = options;
  const issues = checkIntonation(string, setup, frets);
  if (issues.length > 0) return failed(issues);
  if (frets.length === 0) return fail('frets', 'fit.no-frets', 'expected at least one fret to fit');
  if (freeNut && new Set(frets).size < 2) {
    return fail('frets', 'fit.too-few-frets', 'expected at least two different frets when the nut moves too');
  }
  const grid = fretGrid(setup.scaleLength, setup.reliefFrets, frets);
  const errors = new Float64Array(frets.length);
  const trial = new Float64Array(frets.length);
  const { openLength } = openLine(setup, grid.twelfthDip, law.held, 0, 0);
  let { saddle, nut } = setbackStart(elasticAt(string, setup.scaleLength, openLength), setup, options);
  if (!within(setup, saddle, nut)) return NO_ANSWER;
  fretErrors(string, setup, grid, law, saddle, nut, errors);
  let squares = dot(errors, errors);

  for (let step = 0; step < MOST_STEPS && Number.isFinite(squares); step += 1) {
    const gain = setbackGain(string, setup, grid, law, freeNut, saddle, nut);
    let bySaddle = -dot(gain.saddle, errors);
    let byNut = -dot(gain.nut, errors);
    if (Math.abs(bySaddle) + Math.abs(byNut) < CLOSE_MM) {
      if (checkSetback(setup, { saddle, nut }, frets).length > 0) break;
      return ok({ saddle, nut, rms: Math.sqrt(squares / frets.length), cents: Array.from(errors) });
    }
    for (let halving = 0; halving < MOST_HALVINGS; halving += 1) {
      if (within(setup, saddle + bySaddle, nut + byNut)) {
        fretErrors(string, setup, grid, law, saddle + bySaddle, nut + byNut, trial);
        const tried = dot(trial, trial);
        // A short step changes the sum of squares by less than its rounding, so it is taken unseen.
        if (tried <= squares || Math.abs(bySaddle) + Math.abs(byNut) < SHORT_MM) break;
      }
      bySaddle /= 2;
      byNut /= 2;
    }
    if (!within(setup, saddle + bySaddle, nut + byNut)) break;
    saddle += bySaddle;
    nut += byNut;
    errors.set(trial);
    squares = dot(errors, errors);
  }
  return NO_ANSWER;
}

/**
 * The setback that leaves the least sum of squared errors over the frets asked for, by Gauss–Newton.
 *
 * Bending is exact, B_n = B0·(L0/L_n)/√(T_n/T0), and the open string's line is held as the saddle moves.
 * Fails with every figure outside its domain named, or code `fit.no-answer`; never throws.
 */
export const fitSetback = (string: StringSpec, setup: Setup, options: FitOptions): Result<SetbackFit> =>
  fitSetbackBy(exactLaw, string, setup, options);
