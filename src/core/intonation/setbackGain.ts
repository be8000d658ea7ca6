import { fretErrors } from './fretErrors';
import type { FretGrid } from './fretGrid';
import type { ModelLaw } from './modelLaw';
import type { Setup, StringSpec } from './types';

/** By how much each fret's error moves the best setback: the step is −gain·errors, mm per cent. */
export interface SetbackGain {
  readonly saddle: Float64Array;
  /** Zeros when the nut is fixed. */
  readonly nut: Float64Array;
}

const STEP_MM = 0.01; // error of the central difference: 1e-8 of the slope from curvature, as much from rounding

/** (JᵀJ)⁻¹·Jᵀ of the errors with respect to saddle, and nut when it is free, by central differences. */
export function setbackGain(
  string: StringSpec,
  setup: Setup,
  grid: FretGrid,
  law: ModelLaw,
  freeNut: boolean,
  saddle: number,
  nut: number,
): SetbackGain {
  const size = grid.distance.length;
  const high = new Float64Array(size);
  const low = new Float64Array(size);
  const gain = { saddle: new Float64Array(size), nut: new Float64Array(size) };
  fretErrors(string, setup, grid, law, saddle + STEP_MM, nut, high);
  fretErrors(string, setup, grid, law, saddle - STEP_MM, nut, low);
  const bySaddle = high.map((value, i) => (value - (low[i] as number)) / (2 * STEP_MM));
  const ss = dot(bySaddle, bySaddle);
  if (!freeNut) {
    for (let i = 0; i < size; i += 1) gain.saddle[i] = (bySaddle[i] as number) / ss;
    return gain;
  }
  fretErrors(string, setup, grid, law, saddle, nut + STEP_MM, high);
  fretErrors(string, setup, grid, law, saddle, nut - STEP_MM, low);
  const byNut = high.map((value, i) => (value - (low[i] as number)) / (2 * STEP_MM));
  const sn = dot(bySaddle, byNut);
  const nn = dot(byNut, byNut);
  const determinant = ss * nn - sn * sn;
  for (let i = 0; i < size; i += 1) {
    const s = bySaddle[i] as number;
    const n = byNut[i] as number;
    gain.saddle[i] = (nn * s - sn * n) / determinant;
    gain.nut[i] = (ss * n - sn * s) / determinant;
  }
  return gain;
}

/** Sum of products of two equally long lists. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
