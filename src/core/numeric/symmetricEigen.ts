/** An eigenvalue with its eigenvector of length 1. */
export interface EigenPair {
  readonly value: number;
  readonly vector: readonly number[];
}

const MOST_SWEEPS = 60;

const at = (matrix: readonly (readonly number[])[], i: number, j: number): number => matrix[i]?.[j] ?? 0;

/** The rotation that takes the entry (p, q) of a symmetric matrix to 0, as cosine and sine. */
const rotationFor = (matrix: readonly (readonly number[])[], p: number, q: number) => {
  const theta = (at(matrix, q, q) - at(matrix, p, p)) / (2 * at(matrix, p, q));
  const tangent = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const cosine = 1 / Math.hypot(tangent, 1);
  return { cosine, sine: tangent * cosine };
};

/** Columns p and q of a matrix turned by a rotation. */
const turnColumns = (matrix: readonly (readonly number[])[], p: number, q: number, c: number, s: number) =>
  matrix.map((row) =>
    row.map((entry, k) => {
      if (k === p) return c * entry - s * (row[q] ?? 0);
      return k === q ? s * (row[p] ?? 0) + c * entry : entry;
    }),
  );

const transpose = (matrix: readonly (readonly number[])[]) => matrix.map((_, i) => matrix.map((row) => row[i] ?? 0));

/**
 * Eigenvalues and eigenvectors of a small symmetric matrix, the smallest value first, by cyclic Jacobi rotations (Golub
 * and Van Loan, Matrix Computations, ch. 8.5). Throws RangeError when an entry is not finite.
 */
export const symmetricEigen = (matrix: readonly (readonly number[])[]): readonly EigenPair[] => {
  if (!matrix.flat().every(Number.isFinite)) throw new RangeError('Expected finite entries.');
  let turned = matrix;
  let vectors: readonly (readonly number[])[] = matrix.map((_, i) => matrix.map((_, j) => (i === j ? 1 : 0)));
  const size = Math.max(...matrix.flat().map(Math.abs), 0);
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep += 1) {
    let rest = 0;
    for (let p = 0; p < matrix.length; p += 1)
      for (let q = p + 1; q < matrix.length; q += 1) {
        const entry = Math.abs(at(turned, p, q));
        if (entry <= Number.EPSILON * size * 1e-3) continue;
        rest += entry;
        const { cosine, sine } = rotationFor(turned, p, q);
        turned = turnColumns(transpose(turnColumns(turned, p, q, cosine, sine)), p, q, cosine, sine);
        vectors = turnColumns(vectors, p, q, cosine, sine);
      }
    if (rest === 0) break;
  }
  return matrix
    .map((_, k) => ({ value: at(turned, k, k), vector: vectors.map((row) => row[k] ?? 0) }))
    .sort((one, other) => one.value - other.value);
};
