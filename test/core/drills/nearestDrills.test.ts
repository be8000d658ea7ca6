import { describe, expect, it } from 'vitest';
import { nearestDrills } from '../../../src/core/drills/nearestDrills';

const written = (diameter: number, count?: number) =>
  nearestDrills(diameter, count).map(({ name, difference }) => [name, Number(difference.toFixed(4)) + 0]);

describe('nearestDrills', () => {
  // 5.0 mm: #9 is 4.9784, #8 5.0546, 3/16 in 4.7625, 13/64 in 5.159375, A 5.9436, B 6.0452; differences by hand.
  it('tells the nearest of each family and how much larger it is', () => {
    expect(written(5)).toEqual([
      ['13/64 in', 0.1594],
      ['#9', -0.0216],
      ['letter A', 0.9436],
      ['5 mm', 0],
    ]);
  });

  it('tells more of each family, the nearest first', () => {
    expect(written(5, 2)).toEqual([
      ['13/64 in', 0.1594],
      ['3/16 in', -0.2375],
      ['#9', -0.0216],
      ['#8', 0.0546],
      ['letter A', 0.9436],
      ['letter B', 1.0452],
      ['5 mm', 0],
      ['4.9 mm', -0.1],
    ]);
  });

  // 3/16 in: 4.8006 − 4.7625 and 4.8 − 4.7625.
  it('finds an exact fraction of an inch', () => {
    expect(written(4.7625)).toContainEqual(['3/16 in', 0]);
    expect(written(4.7625)).toContainEqual(['#12', 0.0381]);
    expect(written(4.7625)).toContainEqual(['4.8 mm', 0.0375]);
  });

  it.each([
    [4.75, '4.7 mm', '4.8 mm'],
    [0.65, '0.6 mm', '0.7 mm'],
    [11.05, '11 mm', '11.1 mm'],
  ])('takes the smaller of two metric drills as near to %d mm', (diameter, first, second) => {
    const metric = nearestDrills(diameter, 2).filter(({ family }) => family === 'metric');
    expect(metric.map(({ name }) => name)).toEqual([first, second]);
  });

  it('answers beyond the ends of its tables with the last of them', () => {
    expect(written(40).map(([name]) => name)).toEqual(['1/2 in', '#1', 'letter Z', '13 mm']);
    expect(written(0.01).map(([name]) => name)).toEqual(['1/64 in', '#80', 'letter A', '0.5 mm']);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a diameter of %d', (diameter) => {
    expect(() => nearestDrills(diameter)).toThrow(RangeError);
  });

  it.each([0, -1, 1.5, Number.NaN])('refuses a count of %d', (count) => {
    expect(() => nearestDrills(5, count)).toThrow(RangeError);
  });
});
