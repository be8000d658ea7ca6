import { describe, expect, it } from 'vitest';
import { poundsForce } from '../../src/ui/poundsForce';
import { signedCents, withSign } from '../../src/ui/withSign';

describe('withSign', () => {
  it.each([
    [1.25, '1.2', '+1.2'],
    [-1.25, '1.2', '−1.2'],
    [-0.01, '0.0', '0.0'],
    [0.4, '1/64', '+1/64'],
    [0, '0', '0'],
  ])('gives %d as %s its sign', (value, text, signed) => {
    expect(withSign(value, text)).toBe(signed);
  });
});

describe('signedCents', () => {
  it('keeps a tenth and no sign on nothing', () => {
    expect([2.24, -0.4, 0.04, -0.04].map(signedCents)).toEqual(['+2.2', '−0.4', '0.0', '0.0']);
  });
});

describe('poundsForce', () => {
  // 1 lbf = 4.4482216152605 N, NIST SP 811.
  it('takes the pound-force', () => {
    expect(poundsForce(4.4482216152605)).toBeCloseTo(1, 12);
  });
});
