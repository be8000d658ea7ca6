import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../src/core/numeric/rootFinding';

describe('findRoot', () => {
  // Known numbers: √2, the fixed point of the cosine (Dottie number), π/2, a triple root, roots at the ends.
  it.each([
    ['x² − 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2, 1e-12],
    ['cos x − x', (x: number) => Math.cos(x) - x, 0, 1, 0.739085133215161, 1e-12],
    ['cos x, falling interval', Math.cos, 3, 0, Math.PI / 2, 1e-12],
    ['(x − 1)³', (x: number) => (x - 1) ** 3, -3, 2, 1, 1e-4],
    ['x at the low end', (x: number) => x, 0, 5, 0, 1e-12],
    ['x − 5 at the high end', (x: number) => x - 5, 0, 5, 5, 1e-12],
    ['a step', (x: number) => (x < 0.3 ? -1 : 1), 0, 1, 0.3, 1e-11],
    ['steep and flat', (x: number) => Math.exp(20 * x) - 1e6, -10, 3, Math.log(1e6) / 20, 1e-12],
  ])('finds the root of %s', (_name, f, low, high, root, near) => {
    expect(Math.abs(findRoot(f, low, high) - root)).toBeLessThan(near);
  });

  it('needs few calls where the function is smooth', () => {
    let calls = 0;
    const counted = (x: number) => {
      calls++;
      return Math.cos(x) - x;
    };
    findRoot(counted, 0, 1);
    expect(calls).toBeLessThan(12); // halving alone takes 42
  });

  it('throws where no root is enclosed or the function fails', () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow('change of sign');
    expect(() => findRoot(() => Number.NaN, -1, 1)).toThrow('finite');
  });
});
