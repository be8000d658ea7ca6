import { fretErrors } from './fretErrors';
import { fretGrid } from './fretGrid';
import { exactLaw, type ModelLaw } from './modelLaw';
import { requireIntonation } from './requireIntonation';
import type { Setback, Setup, StringSpec } from './types';

/** `fretCents` with the law named, so that published evaluations can be repeated. */
export function fretCentsBy(
  law: ModelLaw,
  string: StringSpec,
  setup: Setup,
  setback: Setback,
  frets: readonly number[],
): readonly number[] {
  requireIntonation(string, setup, setback, frets);
  const out = new Float64Array(frets.length);
  const grid = fretGrid(setup.scaleLength, setup.reliefFrets, frets);
  fretErrors(string, setup, grid, law, setback.saddle, setback.nut, out);
  return Array.from(out);
}

/**
 * Pitch error of fretted notes against equal temperament, cents, open string in tune; + is sharp.
 *
 * End-fret stretch, density, added tension and bending of a string pinned at the saddle and clamped at the fret.
 * @param setback mm; the clearance over fret 12 is held while saddle and nut move
 * @param frets whole frets from 1
 * @returns one error per fret, in the order asked
 * @throws RangeError for a figure outside its domain, naming it
 */
export const fretCents = (
  string: StringSpec,
  setup: Setup,
  setback: Setback,
  frets: readonly number[],
): readonly number[] => fretCentsBy(exactLaw, string, setup, setback, frets);
