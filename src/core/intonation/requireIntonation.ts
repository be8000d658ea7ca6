import type { Issue } from '../result';
import { checkIntonation, checkSetback } from './checkIntonation';
import type { Setback, Setup, StringSpec } from './types';

/** @throws RangeError, naming the figure, unless the model can answer for this string, setup, setback and frets */
export function requireIntonation(string: StringSpec, setup: Setup, setback: Setback, frets: readonly number[]): void {
  refuse(checkIntonation(string, setup, frets));
  refuse(checkSetback(setup, setback, frets));
}

function refuse([problem]: readonly Issue[]): void {
  if (problem) throw new RangeError(`${problem.path}: ${problem.message}`);
}
