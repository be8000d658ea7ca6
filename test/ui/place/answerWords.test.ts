import { describe, expect, it } from 'vitest';
import type { PlaceAnswer } from '../../../src/core/placement/reading/answerTypes';
import { amountOf, answerHeading, degrees, moveLength, sideOf } from '../../../src/ui/place/reading/answerWords';

const MM = { unit: 'mm', decimals: 1 } as const;
const answer = (change: Partial<PlaceAnswer>): PlaceAnswer =>
  ({
    verdict: 'good',
    steps: [],
    quarrel: { ids: [], times: 0, together: false },
    ...change,
  }) as unknown as PlaceAnswer;

describe('answerWords', () => {
  it('head the answer, with what speaks against it first', () => {
    const step = { kind: 'along', toward: 'nut', by: 0.5 } as const;
    expect(answerHeading(answer({}))).toBe('It sits well: leave it');
    expect(answerHeading(answer({ verdict: 'off', steps: [step] }))).toBe('Move it');
    expect(answerHeading(answer({ verdict: 'unsure' }))).toBe('Too uncertain to tell: read finer');
    expect(answerHeading(answer({ verdict: 'unsure', steps: [step] }))).toBe('Perhaps a little off: read more first');
    expect(answerHeading(answer({ verdict: 'unseen' }))).toBe('Not all of it is read yet');
    const quarrel = (...ids: readonly string[]) => answer({ quarrel: { ids, times: 4, together: false } });
    expect(answerHeading(quarrel('a'))).toBe('One reading does not go with the rest');
    expect(answerHeading(quarrel('a', 'b'))).toBe('These readings quarrel: one of them is off');
    expect(answerHeading(answer({ quarrel: { ids: [], times: 2, together: true } }))).toBe(
      'These readings do not go together',
    );
  });

  it('say which way it is off', () => {
    const off = (freedom: 'x' | 'y' | 'angle', by: number) =>
      sideOf({ freedom, off: by, sigma: 0.1, tolerance: 0.25, verdict: 'off' });
    expect(off('x', 0.8)).toBe('too far to the treble');
    expect(off('x', -0.8)).toBe('too far to the bass');
    expect(off('y', 0.5)).toBe('too far toward the tail');
    expect(off('angle', -0.005)).toBe('treble wing toward the nut');
  });

  it('write amounts without a sign, and moves in no coarser fractions than 64ths', () => {
    expect(degrees(-Math.PI / 600)).toBe('0.30°');
    expect(amountOf('x', -0.789, MM)).toBe('0.79 mm');
    expect(amountOf('y', 0.254, { unit: 'in', denominator: 32 })).toBe('0.010″');
    expect(moveLength(0.8, MM)).toBe('0.8 mm');
    // 0.8 mm is 2.016 of 1/64 in.
    expect(moveLength(0.8, { unit: 'in', denominator: 16 })).toBe('1/32″');
    expect(moveLength(0.4, { unit: 'in', denominator: 16 })).toBe('1/64″');
  });
});
