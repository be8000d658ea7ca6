import { solveNormalEquations } from '../../numeric/normalEquations';

/** Of the freedoms that are seen, in their order. */
export type Covariance = readonly (readonly number[])[];

/** The covariance that readings with these slopes leave; empty when they fix nothing. */
export const covarianceOf = (rows: readonly (readonly number[])[], sigmas: readonly number[]): Covariance => {
  if ((rows[0]?.length ?? 0) === 0) return [];
  const fit = solveNormalEquations(
    rows,
    rows.map(() => 0),
    sigmas,
  );
  return fit.ok ? fit.value.covariance : [];
};

/** One sigma of a figure that changes with the freedoms by these slopes: √(a·C·aᵀ). */
export const spreadOf = (slopes: readonly number[], covariance: Covariance): number =>
  Math.sqrt(
    Math.max(
      0,
      slopes.reduce(
        (sum, a, i) => sum + a * slopes.reduce((inner, b, j) => inner + (covariance[i]?.[j] ?? 0) * b, 0),
        0,
      ),
    ),
  );
