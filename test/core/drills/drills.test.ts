import { describe, expect, it } from 'vitest';
import { DRILLS } from '../../../src/core/drills/drills';
import type { DrillFamily } from '../../../src/core/drills/types';
import { DRILL_ROWS, FINE_NUMBERS_MM, LETTERS_MM, NUMBERS_INCHES } from '../../reference/drills';

const of = (family: DrillFamily) => DRILLS.filter((drill) => drill.family === family);
const named = (name: string) => DRILLS.filter((drill) => drill.name === name).map(({ diameter }) => diameter);

describe('the drills', () => {
  it.each(DRILL_ROWS)('%s is %d in, %d mm', (name, inches, mm) => {
    expect(named(name)).toEqual([expect.closeTo(inches * 25.4, 9)]);
    expect(named(name)).toEqual([expect.closeTo(mm, 9)]);
  });

  it('has the fine numbers of the public-domain table', () => {
    const fine = FINE_NUMBERS_MM.map((_, index) => named(`#${80 - index}`)[0]);
    expect(fine).toEqual(FINE_NUMBERS_MM.map((mm) => expect.closeTo(mm, 9)));
  });

  it('has the other numbers of a second table, and with the fine ones all eighty', () => {
    const coarse = NUMBERS_INCHES.map((_, index) => named(`#${56 - index}`)[0]);
    expect(coarse).toEqual(NUMBERS_INCHES.map((inches) => expect.closeTo(inches * 25.4, 9)));
    expect(FINE_NUMBERS_MM.length + NUMBERS_INCHES.length).toBe(80);
  });

  it('has the letters of a chart that rounds to four digits', () => {
    const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].map((letter) => named(`letter ${letter}`)[0]);
    expect(letters.map((mm) => Number(mm?.toPrecision(4)))).toEqual([...LETTERS_MM]);
  });

  it('has 32 fractions, 80 numbers, 26 letters and 126 metric sizes, each family rising', () => {
    // 0.5 to 13.0 by 0.1 is 126 sizes.
    for (const [family, count] of [
      ['fractional', 32],
      ['number', 80],
      ['letter', 26],
      ['metric', 126],
    ] as const) {
      const sizes = of(family).map(({ diameter }) => diameter);
      expect(sizes).toHaveLength(count);
      expect(sizes.every((size, index) => index === 0 || size > (sizes[index - 1] ?? 0))).toBe(true);
    }
    expect(DRILLS).toHaveLength(32 + 80 + 26 + 126);
  });

  // BS 328, multiples of 0.1 mm: en.wikipedia.org, drill bit sizes.
  it('has metric sizes without the noise of arithmetic', () => {
    expect(named('0.5 mm')).toEqual([0.5]);
    expect(named('4.8 mm')).toEqual([4.8]);
    expect(named('5 mm')).toEqual([5]);
    expect(named('13 mm')).toEqual([13]);
  });

  it('has every name once', () => expect(new Set(DRILLS.map(({ name }) => name)).size).toBe(DRILLS.length));
});
