import { describe, expect, it } from 'vitest';
import { add, between, cross, distance, dot, rotate, scale, subtract } from '../../../src/core/geom/points';

// By hand.
describe('points', () => {
  const a = { x: 3, y: 4 };
  const b = { x: -1, y: 2 };

  it('add, subtract, scale and go between', () => {
    expect(add(a, b)).toEqual({ x: 2, y: 6 });
    expect(subtract(a, b)).toEqual({ x: 4, y: 2 });
    expect(scale(a, -2)).toEqual({ x: -6, y: -8 });
    expect(between(a, b, 0.25)).toEqual({ x: 2, y: 3.5 });
  });

  it('measure', () => {
    expect(distance(a, { x: 0, y: 0 })).toBe(5);
    expect(cross(a, b)).toBe(10);
    expect(dot(a, b)).toBe(5);
  });

  it('turn +x toward +y', () => {
    expect(rotate({ x: 2, y: 0 }, Math.PI / 2)).toEqual({ x: expect.closeTo(0, 12), y: expect.closeTo(2, 12) });
    expect(rotate(a, Math.PI)).toEqual({ x: expect.closeTo(-3, 12), y: expect.closeTo(-4, 12) });
  });
});
