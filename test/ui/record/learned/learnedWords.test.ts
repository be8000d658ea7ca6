import { describe, expect, it } from 'vitest';
import { outcomeName, shopWords, strayWords, withoutWords } from '../../../../src/ui/record/learned/learnedWords';

const outcome = { id: 'i12', name: 'Wren 14', serial: 'No. 12', stringUp: 'u12', at: '2026-03-01', strings: [] };
const without = {
  outcome,
  estimates: [0.1, 0.25],
  most: { string: 1, change: 0.15 },
  stray: [1],
};
const signed = (mm: number): string => `${mm < 0 ? '−' : '+'}${Math.abs(mm).toFixed(2)}`;

describe('learnedWords', () => {
  it('count the instruments and say why others are left aside', () => {
    expect(shopWords({ outcomes: [], aside: {} })).toBe('No instrument of like kind was read at its first setting.');
    expect(shopWords({ outcomes: [outcome], aside: { scale: 2, gauges: 1 } })).toBe(
      '1 instrument of like kind was read at its first setting. Left aside: 2 of another scale, 1 with other gauges.',
    );
    expect(shopWords({ outcomes: [outcome, outcome], aside: {} })).toBe(
      '2 instruments of like kind were read at their first setting.',
    );
  });

  it('call an instrument by its number, or by its name', () => {
    expect(outcomeName(outcome)).toBe('No. 12');
    expect(outcomeName({ serial: ' ', name: 'Wren 14' })).toBe('Wren 14');
    expect(outcomeName({ serial: '', name: '' })).toBe('Unnamed');
  });

  it('say what the figure would be without one', () => {
    expect(withoutWords(without, ['E', 'B'], signed)).toBe(
      'Without No. 12 the figure for string 2 (B) would be +0.25 in place of +0.40.',
    );
    expect(withoutWords({ ...without, estimates: [null, null] }, ['E', 'B'], signed)).toBe(
      'Without No. 12 there would be no figure for string 2 (B).',
    );
  });

  it('point at one that came out far off', () => {
    expect(strayWords(without, ['E', 'B'])).toMatch(/^No\. 12 came out farther off .*: string 2 \(B\)\. Look at its/);
  });
});
