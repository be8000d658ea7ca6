import { bendingFactor } from './bendingFactor';
import { CENTS_PER_NEPER } from './centsPerNeper';
import { elasticAt } from './elasticAt';
import { fretGrid } from './fretGrid';
import { fretStretch, frontLength } from './fretStretch';
import { exactLaw } from './modelLaw';
import { openLine } from './openLine';
import { requireIntonation } from './requireIntonation';
import type { Setback, Setup, StringSpec } from './types';

/** Where a fretted note's error comes from, cents, + sharp; the four add up to `fretCents`. */
export interface FretErrorParts {
  /** The sounding length is not the open length's share: C·ln(L0/(g·L)). */
  readonly length: number;
  /** The stretched string is lighter: C·½·ln(1 + Q). */
  readonly density: number;
  /** The stretched string is tighter: C·½·ln(1 + κ·Q). */
  readonly tension: number;
  /** The shorter string is stiffer: C·ln((1 + B + q·B²)/(1 + B0 + q·B0²)). */
  readonly bending: number;
  /** Q, relative, no unit. */
  readonly stretch: number;
}

/**
 * The four parts of each fret's error, after Anderson & Beausoleil, JASA 156(1), 683 (2024).
 * @throws RangeError for a figure outside its domain, naming it
 */
export function fretErrorParts(
  string: StringSpec,
  setup: Setup,
  setback: Setback,
  frets: readonly number[],
): readonly FretErrorParts[] {
  requireIntonation(string, setup, setback, frets);
  const { saddle, nut } = setback;
  const grid = fretGrid(setup.scaleLength, setup.reliefFrets, frets);
  const line = openLine(setup, grid.twelfthDip, exactLaw.held, saddle, nut);
  const { kappa, b0 } = elasticAt(string, setup.scaleLength, line.openLength);
  return frets.map((fret, i) => {
    const stretch = fretStretch(setup, grid, i, line, saddle, nut);
    const pitchRatio = 2 ** (fret / 12);
    const lengthRatio = line.openLength / frontLength(setup, grid, i, line, saddle);
    const bending = exactLaw.bending(b0, lengthRatio, 1 + kappa * stretch, pitchRatio);
    return {
      length: CENTS_PER_NEPER * Math.log(lengthRatio / pitchRatio),
      density: (CENTS_PER_NEPER / 2) * Math.log1p(stretch),
      tension: (CENTS_PER_NEPER / 2) * Math.log1p(kappa * stretch),
      bending: CENTS_PER_NEPER * Math.log(bendingFactor(bending) / bendingFactor(b0)),
      stretch,
    };
  });
}
