import { describe, expect, it } from 'vitest';
import { findingWords, surveyDoubtWords } from '../../src/ui/stations/surveyWords';

const show = (mm: number): string => `${mm.toFixed(1)} mm`;
const READINGS = [
  { fret: 5, value: 161.5 },
  { fret: 12, value: 322.4 },
  { fret: 12, value: 325.5 },
  { fret: 12, value: 322.5 },
];

describe('findingWords', () => {
  it.each([
    [
      { kind: 'reading', index: 2, fret: 12, off: 3.05 },
      'The 2nd reading to the 12th fret is 3.0 mm too long against the others. Read it again.',
    ],
    [
      { kind: 'pair', indices: [0, 1], fret: 7, off: 1.2 },
      'The two readings to the 7th fret differ by 1.2 mm. Read it a third time.',
    ],
    [
      { kind: 'fret', fret: 7, off: -0.8, readings: 3, instead: [] },
      'The 7th fret sits 0.8 mm too near the nut by the other frets: 3 readings agree, so the fret is badly placed.',
    ],
    [
      { kind: 'fret', fret: 7, off: 0.8, readings: 1, instead: [] },
      'The 7th fret sits 0.8 mm too far from the nut by the other frets, or the rule slipped: read it again.',
    ],
    [
      { kind: 'fret', fret: 7, off: 0.8, readings: 2, instead: [5, 12] },
      'The 7th fret sits 0.8 mm too far from the nut by the other frets; the 5th or the 12th standing wrong would explain it as well. Read more frets to tell.',
    ],
  ] as const)('tells %j', (finding, words) => {
    expect(findingWords(finding, READINGS, show)).toBe(words);
  });
});

describe('surveyDoubtWords', () => {
  it('names the rule, or how far the readings stray', () => {
    const rule = { from: 'rule', sigma: 0.25, factor: 1.96, degreesOfFreedom: 1, rule: '' } as const;
    expect(surveyDoubtWords(rule, show)).toContain('by a rule good to 0.25 mm a reading');
    // Student's t for 2 degrees of freedom at 95 %: 4.30, GUM table G.2.
    const scatter = { from: 'scatter', sigma: 0.6, factor: 4.302653, degreesOfFreedom: 2, rule: '' } as const;
    expect(surveyDoubtWords(scatter, show)).toContain('0.6 mm each, times 4.3 for only 2 to spare');
  });
});
