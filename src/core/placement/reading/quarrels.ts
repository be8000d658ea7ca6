import { chiSquareTail } from './chiSquareTail';
import { type Covariance, spreadOf } from './covarianceOf';

/** A reading this many times its own spread off the rest is pointed at: one in 400 sound ones would be. */
const TOO_FAR = 3;
/** Sound readings would go so badly together once in a hundred rounds. */
const TOO_RARE = 0.01;
/** Readings that are checked by one another almost alone are as far off as one another, or nearly: no telling which it is. */
const ALIKE = 0.9;

/** How readings go with one another. */
export interface Quarrel {
  /** The reading that goes worst with the rest; several where it cannot be told which of them it is; none where none stands out. */
  readonly suspects: readonly number[];
  /** By how many times its own spread it is off; 0 with no reading to spare. */
  readonly times: number;
  /** Whether all of them together fit worse than their sigmas allow. */
  readonly together: boolean;
}

/**
 * How readings go with one another: each by its residual against the spread that it should have (Baarda's data snooping,
 * 1968: r / √(σ² − a·C·aᵀ)), all together by chi-square. rows: slopes by the freedoms that are seen, whose covariance is given.
 */
export const quarrelsWith = (
  rows: readonly (readonly number[])[],
  residuals: readonly number[],
  sigmas: readonly number[],
  covariance: Covariance,
): Quarrel => {
  const spare = rows.length - covariance.length;
  if (spare < 1) return { suspects: [], times: 0, together: false };
  const chiSquare = residuals.reduce((sum, residual, k) => sum + (residual / (sigmas[k] ?? 1)) ** 2, 0);
  const times = rows.map((row, k) => {
    const variance = (sigmas[k] ?? 1) ** 2;
    const left = variance - spreadOf(row, covariance) ** 2;
    // A reading that alone fixes a freedom always fits.
    return left < 1e-6 * variance ? 0 : Math.abs(residuals[k] ?? 0) / Math.sqrt(left);
  });
  const most = Math.max(...times);
  return {
    suspects: most > TOO_FAR ? times.flatMap((each, index) => (each >= ALIKE * most ? [index] : [])) : [],
    times: most,
    together: chiSquareTail(chiSquare, spare) < TOO_RARE,
  };
};
