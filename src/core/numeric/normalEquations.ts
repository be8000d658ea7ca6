import { fail, ok, type Result } from '../result';

/** The answer of a linear least-squares problem with p unknowns and n readings. */
export interface LeastSquares {
  readonly solution: readonly number[];
  /** (AᵀWA)⁻¹, p by p. Where the sigmas are only weights, multiply by the square of `residualSd`. */
  readonly covariance: readonly (readonly number[])[];
  /** value − row·solution, in the unit of the values. */
  readonly residuals: readonly number[];
  /** n − p */
  readonly degreesOfFreedom: number;
  /** √(Σ(residual/sigma)² / (n − p)); null when no freedom is left to judge it by. */
  readonly residualSd: number | null;
}

/** A column that keeps less than this share of its length beside the others depends on them within rounding. */
const DEPENDENT_SHARE = 1e-11;

/**
 * Solves row·x ≈ value in the least-squares sense, each difference weighed by 1/sigma (1 where no sigmas are given).
 *
 * The answer is that of the normal equations AᵀWA·x = AᵀWb; it is found by orthogonalising the columns (modified
 * Gram-Schmidt with the right-hand side carried along: Björck, Numerical Methods for Least Squares Problems, 1996,
 * ch. 2.4), which does not square the condition of the problem.
 *
 * Codes: leastSquares.shape (rows, values and sigmas do not match), leastSquares.notFinite, leastSquares.sigma (a sigma
 * is not above 0), leastSquares.tooFew (fewer readings than unknowns), leastSquares.dependent (the readings do not fix
 * every unknown).
 */
export function solveNormalEquations(
  rows: readonly (readonly number[])[],
  values: readonly number[],
  sigmas: readonly number[] = values.map(() => 1),
): Result<LeastSquares> {
  const unknowns = rows[0]?.length ?? 0;
  if (rows.length !== values.length || sigmas.length !== values.length || rows.some((row) => row.length !== unknowns))
    return fail('', 'leastSquares.shape', 'Expected one row and one sigma for each value, and rows of one length.');
  if (![...rows.flat(), ...values, ...sigmas].every(Number.isFinite))
    return fail('', 'leastSquares.notFinite', 'Expected finite numbers.');
  if (sigmas.some((sigma) => sigma <= 0)) return fail('', 'leastSquares.sigma', 'Expected every doubt to be above 0.');
  if (unknowns === 0 || rows.length < unknowns)
    return fail('', 'leastSquares.tooFew', `Expected at least ${Math.max(1, unknowns)} readings, got ${rows.length}.`);

  const weights = sigmas.map((sigma) => 1 / sigma);
  const columns = Array.from({ length: unknowns }, (_, k) =>
    multiply(
      rows.map((row) => row[k] ?? 0),
      weights,
    ),
  );
  const triangle = orthogonalise(columns, multiply(values, weights));
  if (triangle === null)
    return fail(
      '',
      'leastSquares.dependent',
      'The readings do not fix every unknown: another kind of reading is needed.',
    );

  const solution = substituteBack(triangle.rows, triangle.rightSide);
  const units = columns.map((_, k) => columns.map((_, i) => (i === k ? 1 : 0)));
  const inverse = units.map((unit) => substituteBack(triangle.rows, unit));
  const covariance = units.map((a) =>
    units.map((b) => sum(inverse.map((column) => inner(column, a) * inner(column, b)))),
  );
  const residuals = rows.map((row, i) => (values[i] ?? 0) - inner(row, solution));
  const degreesOfFreedom = rows.length - unknowns;
  const weighed = multiply(residuals, weights);
  const residualSd = degreesOfFreedom === 0 ? null : Math.sqrt(inner(weighed, weighed) / degreesOfFreedom);
  return ok({ solution, covariance, residuals, degreesOfFreedom, residualSd });
}

/** Upper triangle R by rows, each from its diagonal on, and Qᵀb; null when a column depends on those before it. */
function orthogonalise(columns: readonly number[][], values: readonly number[]) {
  const rows: number[][] = [];
  const rightSide: number[] = [];
  const lengths = columns.map((column) => Math.sqrt(inner(column, column)));
  let [column, ...later] = columns;
  let rest = values;
  while (column) {
    const length = Math.sqrt(inner(column, column));
    if (length <= DEPENDENT_SHARE * (lengths[rows.length] ?? 0)) return null;
    const direction = column.map((entry) => entry / length);
    const without = (other: readonly number[], share: number) =>
      other.map((entry, i) => entry - share * (direction[i] ?? 0));
    const shares = later.map((other) => inner(direction, other));
    const share = inner(direction, rest);
    rows.push([length, ...shares]);
    rightSide.push(share);
    rest = without(rest, share);
    [column, ...later] = later.map((other, i) => without(other, shares[i] ?? 0));
  }
  return { rows, rightSide };
}

/** Solves R·x = rightSide from the last row up. */
function substituteBack(rows: readonly (readonly number[])[], rightSide: readonly number[]): number[] {
  const found: number[] = [];
  for (const [k, [diagonal = 1, ...later]] of [...rows.entries()].reverse())
    found.unshift(((rightSide[k] ?? 0) - inner(later, found)) / diagonal);
  return found;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, entry) => total + entry, 0);
const multiply = (a: readonly number[], b: readonly number[]): number[] => a.map((entry, i) => entry * (b[i] ?? 0));
const inner = (a: readonly number[], b: readonly number[]): number => sum(multiply(a, b));
