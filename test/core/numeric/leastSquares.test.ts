import { describe, expect, it } from 'vitest';
import { leastSquaresLine } from '../../../src/core/numeric/leastSquaresLine';
import { solveNormalEquations } from '../../../src/core/numeric/normalEquations';
import type { Result } from '../../../src/core/result';
import { GUM_H3, NO_INTERCEPT_1, NORRIS } from '../../reference/statistics';

function answerOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.issues.map((one) => one.message).join());
  return result.value;
}
const codeOf = (result: Result<unknown>): string | undefined => (result.ok ? 'none' : result.issues[0]?.code);
const relative = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe('leastSquaresLine', () => {
  it('meets the certified values of Norris to 12 digits', () => {
    const fit = answerOf(leastSquaresLine(NORRIS.x.map((x, i) => ({ x, y: NORRIS.y[i] ?? Number.NaN }))));
    const sd = fit.residualSd ?? Number.NaN;
    expect(relative(fit.intercept, NORRIS.intercept)).toBeLessThan(1e-12);
    expect(relative(fit.slope, NORRIS.slope)).toBeLessThan(1e-13);
    expect(relative(sd, NORRIS.residualSd)).toBeLessThan(1e-12);
    expect(relative(sd * Math.sqrt(fit.covariance.intercept), NORRIS.interceptSd)).toBeLessThan(1e-12);
    expect(relative(sd * Math.sqrt(fit.covariance.slope), NORRIS.slopeSd)).toBeLessThan(1e-12);
    const squares = fit.residuals.reduce((total, residual) => total + residual * residual, 0);
    expect(relative(squares, NORRIS.residualSquares)).toBeLessThan(1e-12);
  });

  it('gives the figures of GUM H.3', () => {
    const points = GUM_H3.temperature.map((t, i) => ({
      x: t - GUM_H3.reference,
      y: GUM_H3.correction[i] ?? Number.NaN,
    }));
    const { intercept, slope, covariance, residualSd } = answerOf(leastSquaresLine(points));
    const sd = residualSd ?? Number.NaN;
    expect(intercept).toBeCloseTo(GUM_H3.intercept, 4);
    expect(slope).toBeCloseTo(GUM_H3.slope, 5);
    expect(sd).toBeCloseTo(GUM_H3.residualSd, 4);
    expect(sd * Math.sqrt(covariance.intercept)).toBeCloseTo(GUM_H3.interceptDoubt, 4);
    expect(sd * Math.sqrt(covariance.slope)).toBeCloseTo(GUM_H3.slopeDoubt, 5);
    const correlation = covariance.both / Math.sqrt(covariance.intercept * covariance.slope);
    expect(correlation).toBeCloseTo(GUM_H3.correlation, 3);
    const variance = covariance.intercept + 20 * covariance.both + 100 * covariance.slope;
    expect(intercept + 10 * slope).toBeCloseTo(GUM_H3.at30, 4);
    expect(sd * Math.sqrt(variance)).toBeCloseTo(GUM_H3.at30Doubt, 4);
  });

  it('weighs points by their sigmas', () => {
    // By hand: two readings at each of two places, weighed 4 to 1, so that the line passes their weighted means 2 and 7;
    // variance of each mean 1/(1 + 1/4) = 0.8.
    const fit = answerOf(
      leastSquaresLine([
        { x: 0, y: 1, sigma: 1 },
        { x: 0, y: 6, sigma: 2 },
        { x: 1, y: 6, sigma: 1 },
        { x: 1, y: 11, sigma: 2 },
      ]),
    );
    expect(fit.intercept).toBeCloseTo(2, 12);
    expect(fit.slope).toBeCloseTo(5, 12);
    expect(fit.covariance.intercept).toBeCloseTo(0.8, 12);
    expect(fit.covariance.slope).toBeCloseTo(1.6, 12);
    expect(fit.covariance.both).toBeCloseTo(-0.8, 12);
    expect(fit.residuals.map((residual) => Math.round(residual * 1e9) / 1e9)).toEqual([-1, 4, -1, 4]);
    expect(fit.residualSd).toBeCloseTo(Math.sqrt(5), 12); // (1 + 4 + 1 + 4)/(4 − 2)
  });

  it('passes through two points, and then knows no scatter', () => {
    const fit = answerOf(
      leastSquaresLine([
        { x: 1, y: 3 },
        { x: 3, y: 7 },
      ]),
    );
    expect(fit.intercept).toBeCloseTo(1, 12);
    expect(fit.slope).toBeCloseTo(2, 12);
    expect(fit.residualSd).toBeNull();
  });

  it('says why there is no line', () => {
    expect(codeOf(leastSquaresLine([]))).toBe('leastSquares.tooFew');
    expect(codeOf(leastSquaresLine([{ x: 1, y: 1 }]))).toBe('leastSquares.tooFew');
    expect(
      codeOf(
        leastSquaresLine([
          { x: 1, y: 1 },
          { x: 1, y: 2 },
        ]),
      ),
    ).toBe('leastSquares.dependent');
    expect(
      codeOf(
        leastSquaresLine([
          { x: 0, y: 1 },
          { x: Number.NaN, y: 2 },
        ]),
      ),
    ).toBe('leastSquares.notFinite');
    expect(
      codeOf(
        leastSquaresLine([
          { x: 0, y: 1, sigma: 0 },
          { x: 1, y: 2 },
        ]),
      ),
    ).toBe('leastSquares.sigma');
  });
});

describe('solveNormalEquations', () => {
  it('meets the certified values of NoInt1, a line through the origin', () => {
    const fit = answerOf(
      solveNormalEquations(
        NO_INTERCEPT_1.x.map((x) => [x]),
        NO_INTERCEPT_1.y,
      ),
    );
    const sd = fit.residualSd ?? Number.NaN;
    expect(fit.degreesOfFreedom).toBe(10);
    expect(relative(fit.solution[0] ?? Number.NaN, NO_INTERCEPT_1.slope)).toBeLessThan(1e-13);
    expect(relative(sd, NO_INTERCEPT_1.residualSd)).toBeLessThan(1e-13);
    expect(relative(sd * Math.sqrt(fit.covariance[0]?.[0] ?? Number.NaN), NO_INTERCEPT_1.slopeSd)).toBeLessThan(1e-13);
    expect(relative(sd * sd * 10, NO_INTERCEPT_1.residualSquares)).toBeLessThan(1e-13);
  });

  it('keeps digits that squaring the problem would lose', () => {
    // Läuchli's matrix: with e² below rounding AᵀA is singular, yet x = (1, 1, 1) solves it exactly.
    const e = 1e-9;
    const fit = answerOf(
      solveNormalEquations(
        [
          [1, 1, 1],
          [e, 0, 0],
          [0, e, 0],
          [0, 0, e],
        ],
        [3, e, e, e],
      ),
    );
    for (const unknown of fit.solution) expect(unknown).toBeCloseTo(1, 6);
  });

  it('refuses readings that do not fit together', () => {
    expect(codeOf(solveNormalEquations([[1, 2], [1]], [1, 2]))).toBe('leastSquares.shape');
    expect(codeOf(solveNormalEquations([[1]], [1, 2]))).toBe('leastSquares.shape');
    expect(codeOf(solveNormalEquations([[1], [1]], [1, 2], [1]))).toBe('leastSquares.shape');
    expect(
      codeOf(
        solveNormalEquations(
          [
            [1, 2],
            [2, 4],
            [3, 6],
          ],
          [1, 2, 3],
        ),
      ),
    ).toBe('leastSquares.dependent');
    expect(codeOf(solveNormalEquations([[0], [0]], [1, 2]))).toBe('leastSquares.dependent');
    expect(codeOf(solveNormalEquations([[1], [1]], [1, Number.POSITIVE_INFINITY]))).toBe('leastSquares.notFinite');
  });
});
