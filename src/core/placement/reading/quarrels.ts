import { solveNormalEquations } from '../../numeric/normalEquations';

/** A reading this many times its own spread off the rest is pointed at: one in 400 sound ones would be. */
const TOO_FAR = 3;

/**
 * The reading that goes worst with the rest, by its residual against the spread that it should have (Baarda's data snooping,
 * 1968: r / √(σ² − a·C·aᵀ)); null when none stands out, or too few are left over to tell. rows: slopes by the freedoms that
 * are seen.
 */
export const quarrelsWith = (
  rows: readonly (readonly number[])[],
  residuals: readonly number[],
  sigmas: readonly number[],
): { readonly index: number; readonly times: number } | null => {
  const unknowns = rows[0]?.length ?? 0;
  // With one reading to spare every one of them is as far off as the others.
  if (rows.length < unknowns + 2) return null;
  const fit = solveNormalEquations(rows, residuals, sigmas);
  if (!fit.ok) return null;
  const { covariance } = fit.value;
  const times = rows.map((row, k) => {
    const sigma = sigmas[k] ?? 1;
    const explained = row.reduce(
      (sum, a, i) => sum + a * row.reduce((inner, b, j) => inner + (covariance[i]?.[j] ?? 0) * b, 0),
      0,
    );
    const spread = sigma ** 2 - explained;
    // A reading that alone fixes a freedom always fits.
    return spread < 1e-6 * sigma ** 2 ? 0 : Math.abs(residuals[k] ?? 0) / Math.sqrt(spread);
  });
  const index = times.indexOf(Math.max(...times));
  const most = times[index] ?? 0;
  return most > TOO_FAR ? { index, times: most } : null;
};
