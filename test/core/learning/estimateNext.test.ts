import { describe, expect, it } from 'vitest';
import { estimateNext } from '../../../src/core/learning/estimateNext';
import { leaveOneOut } from '../../../src/core/learning/leaveOneOut';
import { shrunk } from '../../../src/core/learning/shrunk';
import { BATTING, ONE_READ, THREE_READ } from '../../reference/learning';

describe('shrunk', () => {
  it.each(BATTING.rows)('draws a batting average of %d to %d as published', (read, drawn) => {
    expect(shrunk(read, BATTING.mean, BATTING.factor)).toBeCloseTo(drawn, 3);
  });
});

describe('estimateNext', () => {
  it('is silent without an instrument', () => {
    expect(estimateNext([], { model: 0.4, spread: 0.5 })).toBeNull();
  });

  it('tells mean, range and count as they are', () => {
    expect(estimateNext([0.9, 0.5, 0.7], THREE_READ)).toMatchObject({
      count: 3,
      mean: expect.closeTo(0.7, 12),
      low: 0.5,
      high: 0.9,
    });
  });

  it('draws the mean toward the model as worked by hand', () => {
    const three = estimateNext(THREE_READ.errors, THREE_READ);
    expect(three?.factor).toBeCloseTo(THREE_READ.factor, 6);
    expect(three?.estimate).toBeCloseTo(THREE_READ.estimate, 6);
    expect(three?.doubt).toBeCloseTo(THREE_READ.doubt, 5);
    const one = estimateNext([ONE_READ.error], THREE_READ);
    expect(one?.factor).toBeCloseTo(ONE_READ.factor, 6);
    expect(one?.estimate).toBeCloseTo(ONE_READ.estimate, 6);
  });

  // By hand, all instruments alike so that the spread is the one held, 0.5²·3/(3 + n − 1): a model sure to 0.2 mm
  // (a treble string) gives one instrument 0.04/(0.04 + 0.25) = 14 %, twenty 0.04/(0.04 + 0.0341/20) = 96 %;
  // one sure to 0.4 mm (a bass string) gives one 39 %.
  it.each([
    [0.2, 1, 0.1379],
    [0.4, 1, 0.3902],
    [0.2, 20, 0.9591],
    [0.4, 20, 0.9895],
  ])('with a model sure to %d mm lets %d instruments count for %d of their mean', (model, count, factor) => {
    const errors = Array.from({ length: count }, () => 0.6);
    expect(estimateNext(errors, { model, spread: 0.5 })?.factor).toBeCloseTo(factor, 4);
  });

  it('refuses what is no figure and a belief of nothing', () => {
    expect(() => estimateNext([Number.NaN], { model: 0.4, spread: 0.5 })).toThrow(RangeError);
    expect(() => estimateNext([1], { model: 0, spread: 0.5 })).toThrow(RangeError);
    expect(() => estimateNext([1], { model: 0.4, spread: Number.POSITIVE_INFINITY })).toThrow(RangeError);
  });
});

describe('leaveOneOut', () => {
  const belief = { model: 0.4, spread: 0.5 };

  it('says what the others say, and what the one changes', () => {
    const left = leaveOneOut([...THREE_READ.errors, 0.6], belief);
    expect(left[3]?.estimate).toBeCloseTo(THREE_READ.estimate, 6);
    for (const { estimate, change } of left)
      expect((estimate ?? 0) + change).toBeCloseTo((left[0]?.estimate ?? 0) + (left[0]?.change ?? 0), 12);
  });

  it('has no figure without the only one', () => {
    expect(leaveOneOut([0.6], belief)).toEqual([
      { estimate: null, change: expect.closeTo(ONE_READ.estimate, 6), stray: false },
    ]);
  });

  it('points at the one that is far off, and at no other', () => {
    const errors = [0.2, 0.3, 0.1, 0.25, 0.15, 3];
    expect(leaveOneOut(errors, belief).map(({ stray }) => stray)).toEqual([false, false, false, false, false, true]);
  });

  it('points at none while there are too few to tell', () => {
    expect(leaveOneOut([0.1, 0.2, 5], belief).some(({ stray }) => stray)).toBe(false);
  });
});
