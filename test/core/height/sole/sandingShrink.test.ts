import { describe, expect, it } from 'vitest';
import { sandingShrink } from '../../../../src/core/height/sole/sandingShrink';
import { SHRINKS } from '../../../reference/sole';

describe('sandingShrink', () => {
  it.each(SHRINKS)('$thickness off sides of $degrees° costs $loss', ({ thickness, degrees, loss }) => {
    expect(sandingShrink(thickness, (degrees * Math.PI) / 180)).toBeCloseTo(loss, 5);
  });

  it('refuses what cannot be', () => {
    for (const [thickness, draft] of [
      [-1, 0.1],
      [Number.NaN, 0.1],
      [Number.POSITIVE_INFINITY, 0.1],
      [1, -0.1],
      [1, Math.PI / 2],
      [1, Number.NaN],
    ] as const)
      expect(() => sandingShrink(thickness, draft)).toThrow(RangeError);
  });
});
