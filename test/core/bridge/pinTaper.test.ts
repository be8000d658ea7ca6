import { describe, expect, it } from 'vitest';
import { angleOfTaper, depthForDiameter, taperOfAngle } from '../../../src/core/bridge/pinTaper';
import { RATIOS, TAPERS } from '../../reference/drills';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

describe('the taper of a reamer', () => {
  it.each(RATIOS)('1:%d is %d° included', (ratio, angle) => {
    expect(degrees(angleOfTaper(1 / ratio))).toBeCloseTo(angle, 5);
    expect(1 / taperOfAngle(radians(angle))).toBeCloseTo(ratio, 4);
  });

  it.each(TAPERS)('%d°: %d mm per mm, %d mm over 10 mm, 0.1 mm in %d mm of depth', (angle, taper, over10, depth) => {
    const found = taperOfAngle(radians(angle));
    expect(found).toBeCloseTo(taper, 6);
    expect(10 * found).toBeCloseTo(over10, 4);
    expect(depthForDiameter(5.3, 5.4, found)).toBeCloseTo(depth, 3);
  });

  it('1:20 is 0.600 in per foot', () => expect(12 * taperOfAngle(2 * Math.atan(1 / 40))).toBeCloseTo(0.6, 12));

  it.each([0, -0.1, Math.PI, Number.NaN])('refuses an angle of %d', (angle) => {
    expect(() => taperOfAngle(angle)).toThrow(RangeError);
  });

  it.each([0, -0.05, Number.NaN, Number.POSITIVE_INFINITY])('refuses a taper of %d', (taper) => {
    expect(() => angleOfTaper(taper)).toThrow(RangeError);
    expect(() => depthForDiameter(4, 5, taper)).toThrow(RangeError);
  });
});

describe('depthForDiameter', () => {
  // 5.40 − 4.7625 = 0.6375 mm on the diameter; at 1:20, 20 mm of depth for each: 12.75. At 3°, 0.6375 · 19.09423 = 12.17257.
  it('tells how far the reamer goes on from the rim of the pilot hole', () => {
    expect(depthForDiameter(4.7625, 5.4, 0.05)).toBeCloseTo(12.75, 9);
    expect(depthForDiameter(4.7625, 5.4, taperOfAngle(radians(3)))).toBeCloseTo(12.17257, 4);
  });

  it('is nothing when the pilot hole has the diameter', () => expect(depthForDiameter(5, 5, 0.05)).toBe(0));

  it.each([
    [5.4, 5.3],
    [0, 5],
    [-1, 5],
    [4, Number.NaN],
    [4, Number.POSITIVE_INFINITY],
  ])('refuses a pilot hole of %d mm for a mouth of %d mm', (pilot, mouth) => {
    expect(() => depthForDiameter(pilot, mouth, 0.05)).toThrow(RangeError);
  });
});
