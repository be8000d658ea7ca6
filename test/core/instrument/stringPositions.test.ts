import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StringPositionsArguments, stringPositions } from '../../../src/core/instrument/stringPositions';
import { EVEN_CENTRES, NUT_GAPS } from '../../reference/trade';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const base: StringPositionsArguments = {
  width: 44,
  marginTreble: 3,
  marginBass: 3,
  diameters: [0.3, 0.4, 0.6, 0.8, 1, 1.3],
  rule: 'equal-gaps',
};

describe('stringPositions, equal gaps', () => {
  it('leaves (outside span − sum of gauges) / 5 of air: 0.2588 in', () => {
    const width = 1.6875;
    const marginTreble = 0.125;
    const diameters = NUT_GAPS.gauges;
    const marginBass = width - marginTreble - NUT_GAPS.span;
    const x = answerOf(stringPositions({ width, marginTreble, marginBass, diameters, rule: 'equal-gaps' }));
    for (let index = 1; index < x.length; index += 1) {
      const [before = 0, after = 0] = [x[index - 1], x[index]];
      const air = before - after - ((diameters[index - 1] ?? 0) + (diameters[index] ?? 0)) / 2;
      expect(air).toBeCloseTo(NUT_GAPS.air, 10);
    }
    // Outsides of the outer strings: 0.84375 − 0.125 on the treble side; 1.442 farther on, −0.72325.
    expect((x[0] ?? 0) + 0.01 / 2).toBeCloseTo(0.71875, 10);
    expect((x[5] ?? 0) - 0.046 / 2).toBeCloseTo(-0.72325, 10);
  });

  it('mirrors when margins change sides and strings their order', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.array(fc.double({ min: 0.2, max: 1.5, noNaN: true }), { minLength: 2, maxLength: 10 }),
        fc.constantFrom('equal-gaps' as const, 'equal-centres' as const),
        (marginTreble, marginBass, diameters, rule) => {
          const there = answerOf(stringPositions({ width: 50, marginTreble, marginBass, diameters, rule }));
          const back = answerOf(
            stringPositions({
              width: 50,
              marginTreble: marginBass,
              marginBass: marginTreble,
              diameters: [...diameters].reverse(),
              rule,
            }),
          );
          for (const [index, x] of [...back].reverse().entries()) expect(x).toBeCloseTo(-(there[index] ?? 0), 9);
        },
      ),
      { seed: 20260101, numRuns: 100 },
    );
  });
});

describe('stringPositions, equal centres', () => {
  it.each(EVEN_CENTRES)('$count over $outer stand $pitch apart', ({ outer, count, pitch }) => {
    const diameter = 0.5;
    const x = answerOf(
      stringPositions({
        width: outer + diameter + 2,
        marginTreble: 1,
        marginBass: 1,
        diameters: Array.from({ length: count }, () => diameter),
        rule: 'equal-centres',
      }),
    );
    expect(x).toHaveLength(count);
    expect(x[0]).toBeCloseTo(outer / 2, 9);
    for (let index = 1; index < count; index += 1) expect((x[index - 1] ?? 0) - (x[index] ?? 0)).toBeCloseTo(pitch, 6);
  });

  it('is the same as equal gaps when all strings are alike', () => {
    const diameters = [0.7, 0.7, 0.7, 0.7];
    const gaps = answerOf(stringPositions({ ...base, diameters }));
    const centres = answerOf(stringPositions({ ...base, diameters, rule: 'equal-centres' }));
    for (const [index, x] of gaps.entries()) expect(x).toBeCloseTo(centres[index] ?? Number.NaN, 12);
  });
});

describe('stringPositions refuses', () => {
  it.each([
    ['one string', { diameters: [1] }, 'strings.few'],
    ['no strings', { diameters: [] }, 'strings.few'],
    ['a string without thickness', { diameters: [0.3, 0] }, 'strings.diameter'],
    ['a diameter that is no number', { diameters: [0.3, Number.NaN] }, 'strings.diameter'],
    ['an endless width', { width: Number.POSITIVE_INFINITY }, 'strings.width'],
    ['a margin that is no number', { marginBass: Number.NaN }, 'strings.width'],
    ['margins wider than the board', { marginTreble: 30, marginBass: 30 }, 'strings.tight'],
    // 6 strings of 7 mm are 42; the outsides span 38.
    ['strings that touch', { diameters: [7, 7, 7, 7, 7, 7] }, 'strings.tight'],
  ])('%s', (_, change, code) => {
    expect(codesOf(stringPositions({ ...base, ...change }))).toEqual([code]);
  });
});
