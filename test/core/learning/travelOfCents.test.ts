import { describe, expect, it } from 'vitest';
import { travelOfCents } from '../../../src/core/learning/travelOfCents';
import { CENTS_A_MM } from '../../reference/learning';

describe('travelOfCents', () => {
  // One mm of saddle travel at the 12th fret, as common sense has it in cents: test/reference/learning.ts.
  it.each(CENTS_A_MM)(
    'at scale %d takes about %d cents at the 12th fret for one mm, back for a sharp note',
    (scale, cents) => {
      expect(travelOfCents([{ fret: 12, cents }], scale, 1)?.travel).toBeCloseTo(1, 2);
      expect(travelOfCents([{ fret: 12, cents: -cents }], scale, 1)?.travel).toBeCloseTo(-1, 2);
    },
  );

  it('is silent where nothing was read', () => {
    expect(travelOfCents([], 645, 1)).toBeNull();
  });

  // By hand: C = 1731.234; gains at 645: fret 5 0.898738, 7 1.337498, 12 2.684084; Σ gain² 9.800972;
  // (1·0.898738 + 2·1.337498 + 3.5·2.684084)/9.800972 = 1.323142.
  const three = [
    { fret: 5, cents: 1 },
    { fret: 7, cents: 2 },
    { fret: 12, cents: 3.5 },
  ];
  it('brings several frets nearest to in tune', () => {
    expect(travelOfCents(three, 645, 1)?.travel).toBeCloseTo(1.323142, 5);
  });

  // One note ± 1 and the open string ± 1: √2/2.684084 = 0.526889. Three: the open string is one and the same,
  // √(Σ(g/S)² + (Σg/S)²) = 0.595030, which is more than for the 12th alone, whose weight is largest.
  it('counts the tuner for the fretted note and for the open string', () => {
    expect(travelOfCents([{ fret: 12, cents: 3 }], 645, 1)?.doubt).toBeCloseTo(0.526889, 5);
    expect(travelOfCents(three, 645, 1)?.doubt).toBeCloseTo(0.59503, 5);
    expect(travelOfCents(three, 645, 2)?.doubt).toBeCloseTo(2 * 0.59503, 5);
  });

  it('refuses what is no figure', () => {
    expect(() => travelOfCents([{ fret: 12, cents: Number.NaN }], 645, 1)).toThrow(RangeError);
    expect(() => travelOfCents([{ fret: 0, cents: 1 }], 645, 1)).toThrow(RangeError);
    expect(() => travelOfCents([{ fret: 12, cents: 1 }], 645, Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
