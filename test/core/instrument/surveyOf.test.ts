import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import { surveyOf } from '../../../src/core/instrument/surveyOf';
import { steelProject, steelWith } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const { instrument } = steelProject;
const read = (readings: readonly { readonly fret: number; readonly value: number }[], offset = 0) => ({
  ...instrument,
  nut: { ...instrument.nut, offset },
  scale: { from: 'readings' as const, entered: 700, readings },
});
const twelfth = (...values: readonly number[]) => values.map((value) => ({ fret: 12, value }));
const survey = (...args: Parameters<typeof read>) => {
  const found = surveyOf(read(...args));
  if (found === null) throw new Error('There is no survey.');
  return found;
};

describe('surveyOf', () => {
  it('is silent while the scale is as entered', () => {
    expect(surveyOf({ ...instrument, scale: { ...instrument.scale, readings: twelfth(320, 321) } })).toBeNull();
  });

  // Three readings about 322.5; one reading of a half-millimetre rule is doubted by 0.25 mm, one sigma (common practice, no
  // source): 2 · 1.96 · 0.25 / √3 = 0.566 at 95 %.
  it('gives scale and doubt of readings to the 12th fret', () => {
    const { scaleLength, nutOffset, findings } = answerOf(survey(twelfth(322.4, 322.5, 322.6)));
    expect(scaleLength.value).toBeCloseTo(645, 9);
    expect(scaleLength.plusMinus).toBeCloseTo(0.566, 3);
    expect(nutOffset).toEqual({ value: 0, plusMinus: null });
    expect(findings).toEqual([]);
  });

  // Frets of 645 (2^(−5/12) = 0.749153538, 2^(−7/12) = 0.667419927) with half a millimetre cut off the nut end.
  const cut = [
    { fret: 5, value: 161.795968 - 0.5 },
    { fret: 7, value: 214.514147 - 0.5 },
    { fret: 12, value: 322.5 - 0.5 },
  ];

  it('finds a shortened nut end by readings to other frets', () => {
    const { scaleLength, nutOffset } = answerOf(survey(cut));
    expect(scaleLength.value).toBeCloseTo(645, 4);
    expect(nutOffset.value).toBeCloseTo(-0.5, 4);
  });

  it('takes a nut offset that is known off first, so that nothing is left to find', () => {
    const { scaleLength, nutOffset } = answerOf(survey(cut, -0.5));
    expect(scaleLength.value).toBeCloseTo(645, 4);
    expect(nutOffset.value).toBeCloseTo(0, 4);
  });

  it('points at a reading that stands off by 2 mm', () => {
    const { findings } = answerOf(survey(twelfth(322.5, 322.6, 324.5, 322.4)));
    expect(findings).toMatchObject([{ kind: 'reading', index: 2, fret: 12 }]);
  });

  it('says that readings should count and there are none', () => {
    expect(codesOf(survey([]))).toEqual(['survey.count']);
    expect(createDerive()(steelWith({ instrument: read([]) })).survey).toMatchObject({ ok: false });
  });
});
