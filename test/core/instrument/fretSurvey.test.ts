import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fretSurvey } from '../../../src/core/instrument/fretSurvey';
import type { FretSurvey, SurveyReading } from '../../../src/core/instrument/surveyTypes';
import { seededRandom } from '../../../src/core/numeric/seededRandom';
import { FRET_SHARES, THREE_READINGS, TWO_FRETS } from '../../reference/survey';

const survey = (readings: readonly SurveyReading[], ruleDoubt = 0.25): FretSurvey => {
  const result = fretSurvey(readings, { ruleDoubt });
  if (!result.ok) throw new Error(result.issues.map(({ message }) => message).join());
  return result.value;
};
const codes = (readings: readonly SurveyReading[], ruleDoubt = 0.25): readonly string[] => {
  const result = fretSurvey(readings, { ruleDoubt });
  return result.ok ? [] : result.issues.map(({ path, code }) => `${path} ${code}`);
};

interface Board {
  readonly scale: number;
  readonly offset: number;
  /** [fret, how often it is read] */
  readonly plan: readonly (readonly [number, number])[];
  readonly noise: number;
  readonly seed: number;
  readonly badFret?: number;
  readonly off?: number;
}
const board = ({ scale, offset, plan, noise, seed, badFret, off = 0 }: Board): SurveyReading[] => {
  const { normal } = seededRandom(seed);
  return plan.flatMap(([fret, times]) =>
    Array.from({ length: times }, () => ({
      fret,
      value: scale * (FRET_SHARES[fret] ?? Number.NaN) + offset + noise * normal() + (fret === badFret ? off : 0),
    })),
  );
};
const WIDE = [
  [3, 3],
  [5, 3],
  [7, 3],
  [9, 3],
  [12, 5],
  [14, 3],
  [17, 3],
] as const;

describe('fretSurvey: scale and offset', () => {
  it('doubles three readings to the 12th fret, with Student’s t (by hand)', () => {
    const { scaleLength, nutOffset, doubt, frets, findings } = survey(
      THREE_READINGS.values.map((value) => ({ fret: 12, value })),
    );
    expect(scaleLength.value).toBeCloseTo(THREE_READINGS.scaleLength, 3);
    expect(scaleLength.plusMinus).toBeCloseTo(THREE_READINGS.plusMinus, 4);
    expect(nutOffset).toEqual({ value: 0, plusMinus: null });
    expect(doubt).toMatchObject({ from: 'scatter', degreesOfFreedom: 2 });
    expect(doubt.sigma).toBeCloseTo(THREE_READINGS.sigma, 5);
    expect(doubt.factor).toBeCloseTo(THREE_READINGS.factor, 5);
    // 12 45/64 less 12 11/16 in: 1/64 in.
    expect(frets).toHaveLength(1);
    expect(frets[0]).toMatchObject({ fret: 12, count: 3 });
    expect(frets[0]?.spread).toBeCloseTo(0.396875, 9);
    expect(findings).toEqual([]);
  });

  it('takes the rule’s own doubt while there are too few readings, and where they agree by luck', () => {
    const { scaleLength, nutOffset, doubt, residuals } = survey(TWO_FRETS.readings, TWO_FRETS.ruleDoubt);
    expect(scaleLength.value).toBeCloseTo(TWO_FRETS.scaleLength, 9);
    expect(scaleLength.plusMinus).toBeCloseTo(TWO_FRETS.scalePlusMinus, 5);
    expect(nutOffset.value).toBeCloseTo(TWO_FRETS.nutOffset, 9);
    expect(nutOffset.plusMinus).toBeCloseTo(TWO_FRETS.offsetPlusMinus, 5);
    expect(doubt).toMatchObject({ from: 'rule', sigma: 0.25, degreesOfFreedom: 0 });
    expect(doubt.rule).toContain('at least two');
    for (const residual of residuals) expect(residual).toBeCloseTo(0, 9);

    const alike = survey(Array.from({ length: 5 }, () => ({ fret: 12, value: 322.5 })));
    expect(alike.doubt.from).toBe('rule');
    // 2 · 1.959964 · 0.25 / √5
    expect(alike.scaleLength.plusMinus).toBeCloseTo(0.438261, 5);
  });

  it('finds a nut end shortened by 0.3 mm, within its ±', () => {
    const readings = board({ scale: 645, offset: -0.3, plan: WIDE, noise: 0.1, seed: 7 });
    const { scaleLength, nutOffset, findings, cleared } = survey(readings, 0.1);
    expect(Math.abs(scaleLength.value - 645)).toBeLessThan(scaleLength.plusMinus);
    expect(Math.abs(nutOffset.value + 0.3)).toBeLessThan(nutOffset.plusMinus ?? 0);
    // Small enough to tell the offset from none.
    expect(nutOffset.plusMinus).toBeLessThan(0.3);
    expect(findings).toEqual([]);
    expect(cleared).toBeNull();
  });

  it('covers the truth in 95 of 100 boards by the scatter alone (seeded; Student’s t is exact for normal noise)', () => {
    const plan = [
      [7, 1],
      [12, 3],
    ] as const;
    let covered = 0;
    for (let seed = 1; seed <= 1000; seed++) {
      const { scaleLength, doubt } = survey(board({ scale: 650, offset: -0.2, plan, noise: 0.2, seed }), 1e-6);
      expect(doubt.from).toBe('scatter');
      if (Math.abs(scaleLength.value - 650) < scaleLength.plusMinus) covered++;
    }
    // Binomial: sd √(1000·0.95·0.05) = 6.9; four of them.
    expect(Math.abs(covered - 950)).toBeLessThan(28);
  });
});

describe('fretSurvey: what does not belong', () => {
  it('names the one stray among five readings to the 12th fret', () => {
    const { findings, cleared, scaleLength } = survey(
      [322.5, 322.4, 324.5, 322.6, 322.5].map((value) => ({ fret: 12, value })),
    );
    // The mean of the others is 322.5.
    expect(findings).toEqual([{ kind: 'reading', index: 2, fret: 12, off: expect.closeTo(2, 9) }]);
    expect(scaleLength.value).toBeCloseTo(645.8, 9);
    expect(cleared?.scaleLength.value).toBeCloseTo(645, 9);
    expect(cleared?.nutOffset).toEqual({ value: 0, plusMinus: null });
  });

  it('asks for a third reading when two differ by more than their doubt', () => {
    const { findings, cleared } = survey([
      { fret: 12, value: 322.5 },
      { fret: 12, value: 324 },
    ]);
    expect(findings).toEqual([{ kind: 'pair', indices: [0, 1], fret: 12, off: 1.5 }]);
    expect(cleared).toBeNull();
  });

  it('finds a 5th fret that stands 0.6 mm toward the nut beside a shifted nut', () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const readings = board({ scale: 645, offset: -0.5, plan: WIDE, noise: 0.1, seed, badFret: 5, off: -0.6 });
      const { findings, cleared } = survey(readings, 0.1);
      expect(findings).toHaveLength(1);
      const [finding] = findings;
      expect(finding).toMatchObject({ kind: 'fret', fret: 5, readings: 3, instead: [] });
      // Three readings and the line: 2.5 · 0.1 · √(1/3 + 1/6).
      expect(Math.abs((finding?.off ?? 0) + 0.6)).toBeLessThan(0.18);
      expect(Math.abs((cleared?.scaleLength.value ?? 0) - 645)).toBeLessThan(cleared?.scaleLength.plusMinus ?? 0);
      expect(Math.abs((cleared?.nutOffset.value ?? 0) + 0.5)).toBeLessThan(cleared?.nutOffset.plusMinus ?? 0);
    }
  });

  it('tells a stray reading from a badly placed fret', () => {
    const readings = board({ scale: 645, offset: 0, plan: WIDE, noise: 0.05, seed: 11, badFret: 9, off: 0.8 });
    const slipped = readings.map((each, index) => (index === 1 ? { ...each, value: each.value + 1.5 } : each));
    const { findings } = survey(slipped, 0.1);
    expect(findings.map(({ kind, fret }) => `${kind} ${fret}`)).toEqual(['reading 3', 'fret 9']);
    expect(findings[0]).toMatchObject({ index: 1 });
    expect(Math.abs((findings[1]?.off ?? 0) - 0.8)).toBeLessThan(0.2);
  });

  it('says that three frets cannot tell which of them is off', () => {
    const plan = [
      [5, 3],
      [12, 3],
      [19, 3],
    ] as const;
    const { findings, cleared } = survey(
      board({ scale: 645, offset: 0, plan, noise: 0, seed: 1, badFret: 12, off: 1.2 }),
      0.1,
    );
    expect(findings).toHaveLength(1);
    const [finding] = findings;
    if (finding?.kind !== 'fret') throw new Error('expected a fret');
    expect([finding.fret, ...finding.instead].sort((a, b) => a - b)).toEqual([5, 12, 19]);
    expect(cleared).toBeNull();
  });

  it('raises a false alarm on about one sound board in twenty at most (seeded)', () => {
    let alarms = 0;
    for (let seed = 1; seed <= 400; seed++)
      if (survey(board({ scale: 645, offset: 0, plan: WIDE, noise: 0.15, seed }), 0.15).findings.length > 0) alarms++;
    // One in twenty for readings and one for frets: 40 at most; sd √(400·0.1·0.9) = 6; three of them.
    expect(alarms).toBeLessThan(58);
  });

  it('does not depend on the order of the readings (seeded)', () => {
    const readings = board({ scale: 645, offset: -0.3, plan: WIDE, noise: 0.1, seed: 5, badFret: 7, off: 0.7 });
    const straight = survey(readings, 0.1);
    fc.assert(
      fc.property(fc.shuffledSubarray(readings, { minLength: readings.length }), (mixed) => {
        const turned = survey(mixed, 0.1);
        expect(turned.scaleLength.value).toBeCloseTo(straight.scaleLength.value, 9);
        expect(turned.findings.map(({ kind, fret }) => [kind, fret])).toEqual([['fret', 7]]);
      }),
      { seed: 3, numRuns: 50 },
    );
  });
});

describe('fretSurvey: wrong input', () => {
  it('says what was expected', () => {
    expect(codes([])).toEqual([' survey.count']);
    expect(codes(Array.from({ length: 31 }, () => ({ fret: 12, value: 322.5 })))).toEqual([' survey.count']);
    expect(codes([{ fret: 0, value: 10 }])).toEqual(['0.fret survey.fret']);
    expect(codes([{ fret: 7.5, value: -1 }])).toEqual(['0.fret survey.fret', '0.value survey.value']);
    expect(codes([{ fret: 12, value: Number.NaN }])).toEqual(['0.value survey.value']);
    expect(codes([{ fret: 12, value: 322 }], 0)).toEqual(['ruleDoubt survey.doubt']);
    expect(
      codes([
        { fret: 5, value: 322 },
        { fret: 12, value: 162 },
      ]),
    ).toEqual([' survey.order']);
  });
});
