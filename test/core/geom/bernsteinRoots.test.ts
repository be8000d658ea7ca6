import { describe, expect, it } from 'vitest';
import { bernsteinRoots } from '../../../src/core/geom/bernsteinRoots';

// Polynomials by hand: Bernstein coefficients of products of (t − root), and of powers.
describe('bernsteinRoots', () => {
  it.each([
    ['t − 1/4', [-0.25, 0.75], [0.25]],
    ['(t − 1/4)(t − 1/2)', [1 / 8, -1 / 4, 3 / 8], [0.25, 0.5]],
    ['t − 1/2, met by halving', [-1, 0, 1], [0.5]],
    ['(t − 1/3)³', [-1 / 27, 2 / 27, -4 / 27, 8 / 27], [1 / 3]],
    ['none inside: t + 1', [1, 2], []],
    ['none: t² − t + 1', [1, 0.5, 1], []],
    ['at the ends only: t(1 − t)', [0, 0.5, 0], []],
    ['zero throughout', [0, 0, 0], []],
    ['no coefficients', [], []],
  ])('of %s', (_name, coefficients, roots) => {
    const found = bernsteinRoots(coefficients);
    const apart = found.filter((root, i) => i === 0 || root - (found[i - 1] ?? 0) > 1e-4);
    expect(apart).toHaveLength(roots.length);
    for (const [i, root] of roots.entries()) expect(Math.abs((apart[i] ?? Number.NaN) - root)).toBeLessThan(1e-5);
  });

  it('finds single roots to the last digits', () => {
    // 2t² − 1 = 0 at √½; coefficients −1, −1, 1.
    expect(bernsteinRoots([-1, -1, 1])[0]).toBeCloseTo(Math.SQRT1_2, 14);
  });
});
