import { ok, type Result } from '../result';
import { solveNormalEquations } from './normalEquations';

/** A straight line y = intercept + slope·x through scattered points. */
export interface LineFit {
  readonly intercept: number;
  readonly slope: number;
  /** Of intercept and slope. Where no sigmas were given, multiply by the square of `residualSd`. */
  readonly covariance: { readonly intercept: number; readonly slope: number; readonly both: number };
  /** y − line, one for each point. */
  readonly residuals: readonly number[];
  /** √(Σ(residual/sigma)² / (n − 2)); null with two points. */
  readonly residualSd: number | null;
}

/**
 * The line that leaves the least sum of squares in y, each point weighed by 1/sigma (1 where not given); x is exact.
 *
 * Codes: as solveNormalEquations; leastSquares.dependent when all points lie at one x.
 */
export function leastSquaresLine(
  points: readonly { readonly x: number; readonly y: number; readonly sigma?: number }[],
): Result<LineFit> {
  const fit = solveNormalEquations(
    points.map(({ x }) => [1, x]),
    points.map(({ y }) => y),
    points.map(({ sigma }) => sigma ?? 1),
  );
  if (!fit.ok) return fit;
  const { solution, covariance, residuals, residualSd } = fit.value;
  const [intercept = 0, slope = 0] = solution;
  const [[interceptVariance = 0, both = 0] = [], [, slopeVariance = 0] = []] = covariance;
  return ok({
    intercept,
    slope,
    covariance: { intercept: interceptVariance, slope: slopeVariance, both },
    residuals,
    residualSd,
  });
}
