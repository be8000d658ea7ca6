import { bendingFactor } from './bendingFactor';
import { CENTS_PER_NEPER } from './centsPerNeper';
import { elasticAt } from './elasticAt';
import type { FretGrid } from './fretGrid';
import { fretStretch, frontLength } from './fretStretch';
import type { ModelLaw } from './modelLaw';
import { openLine } from './openLine';
import type { Setup, StringSpec } from './types';

/**
 * Error of every fret of the grid, cents, into `out`: the inner loop of fits and samples, so nothing is checked and no
 * list is made here. The sum of `fretErrorParts`, by one logarithm.
 */
export function fretErrors(
  string: StringSpec,
  setup: Setup,
  grid: FretGrid,
  law: ModelLaw,
  saddle: number,
  nut: number,
  out: Float64Array,
): void {
  const line = openLine(setup, grid.twelfthDip, law.held, saddle, nut);
  const { kappa, b0 } = elasticAt(string, setup.scaleLength, line.openLength);
  const openFactor = bendingFactor(b0);
  for (let i = 0; i < out.length; i += 1) {
    const pitchRatio = grid.pitchRatio[i] as number;
    const stretch = fretStretch(setup, grid, i, line, saddle, nut);
    const tensionRatio = 1 + kappa * stretch;
    const lengthRatio = line.openLength / frontLength(setup, grid, i, line, saddle);
    const bending = bendingFactor(law.bending(b0, lengthRatio, tensionRatio, pitchRatio)) / openFactor;
    out[i] = CENTS_PER_NEPER * Math.log((lengthRatio / pitchRatio) * bending * Math.sqrt((1 + stretch) * tensionRatio));
  }
}
