import { solveNormalEquations } from '../../numeric/normalEquations';
import { chiSquareTail } from './chiSquareTail';
import { spreadOf } from './covarianceOf';

/** A reading this many times its own spread off the rest is pointed at: one in 400 sound ones would be. */
const TOO_FAR = 3;
/** Sound readings would go so badly together once in a hundred rounds. */
const TOO_RARE = 0.01;
/** Readings that are checked by one another almost alone are as far off as one another, or nearly: no telling which it is. */
const ALIKE = 0.9;

/** Holds what the readings do not fix where it is, and is felt by nothing else: a sigma of 1 m, and of 10 radians. */
const ANYWHERE = {
  rows: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  sigmas: [1000, 1000, 10],
} as const;

/** How readings go with one another. */
export interface Quarrel {
  /** The reading that goes worst with the rest; several where it cannot be told which of them it is; none where none stands out. */
  readonly suspects: readonly number[];
  /** By how many times its own spread it is off; 0 with no reading to spare. */
  readonly times: number;
  /** Whether all of them together fit worse than their sigmas allow. */
  readonly together: boolean;
  /** What of each reading the rest do not explain, mm: + when it reads more. */
  readonly left: readonly number[];
}

/**
 * How readings go with one another, whether or not they fix every freedom: each by its residual against the spread that it
 * should have (Baarda's data snooping, 1968: r / √(σ² − a·C·aᵀ)), all together by chi-square on as many degrees of freedom
 * as there are readings to spare. slopes by x, y and angle, and residuals, at any pose near where the bridge sits.
 */
export const quarrelsWith = (
  slopes: readonly (readonly number[])[],
  residuals: readonly number[],
  sigmas: readonly number[],
): Quarrel => {
  const fit = solveNormalEquations(
    [...slopes, ...ANYWHERE.rows],
    [...residuals, 0, 0, 0],
    [...sigmas, ...ANYWHERE.sigmas],
  );
  if (!fit.ok) return { suspects: [], times: 0, together: false, left: residuals };
  const { covariance } = fit.value;
  const left = fit.value.residuals.slice(0, slopes.length);
  // The share of each reading that the others check; together as many as there are to spare.
  const checked = slopes.map((row, k) => 1 - (spreadOf(row, covariance) / (sigmas[k] ?? 1)) ** 2);
  const spare = Math.round(checked.reduce((sum, each) => sum + each, 0));
  if (spare < 1) return { suspects: [], times: 0, together: false, left };
  const inSigmas = slopes.map((_, k) => (left[k] ?? 0) / (sigmas[k] ?? 1));
  // A reading that alone fixes a freedom always fits.
  const times = inSigmas.map((each, k) => ((checked[k] ?? 0) < 1e-6 ? 0 : Math.abs(each) / Math.sqrt(checked[k] ?? 1)));
  const most = Math.max(...times);
  return {
    suspects: most > TOO_FAR ? times.flatMap((each, index) => (each >= ALIKE * most ? [index] : [])) : [],
    times: most,
    together:
      chiSquareTail(
        inSigmas.reduce((sum, each) => sum + each ** 2, 0),
        spare,
      ) < TOO_RARE,
    left,
  };
};
