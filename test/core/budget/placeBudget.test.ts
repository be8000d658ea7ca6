import { describe, expect, it } from 'vitest';
import { ERROR_SOURCES } from '../../../src/core/budget/errorSources';
import { pinLooseness } from '../../../src/core/budget/pinLooseness';
import { type BudgetCase, placeBudget } from '../../../src/core/budget/placeBudget';
import { sourcesWithPrint } from '../../../src/core/budget/sourcesWithPrint';
import { GUM_H1 } from '../../reference/statistics';

/** A guitar of our own invention. 2.684 cents a mm at 645: 1731 / 645, trade arithmetic. */
const GUITAR: BudgetCase = { height: 10, length: 152.4, carried: 30, apart: 74, reach: 27, centsPerMm: 2.684 };
const NONE = Object.fromEntries(ERROR_SOURCES.map(({ id }) => [id, 0]));

describe('placeBudget', () => {
  it('carries one error by itself as hand arithmetic has it', () => {
    // Both ends read to 0.25 each: the middle is off by 0.25/√2 = 0.1768, the whole turned by 0.25·√2/152.4 = 0.002320.
    const rule = placeBudget(GUITAR, { ...NONE, placeRule: 0.25 });
    expect(rule.along).toBeCloseTo(0.1768, 4);
    expect(rule.turn).toBeCloseTo(0.00232, 5);
    // √(0.1768² + (0.00232 · 27)²) · 2.684 = √(0.03125 + 0.003924) · 2.684 = 0.5034.
    expect(rule.cents).toBeCloseTo(0.5034, 3);
    // 10 · sin 0.5° = 0.08727, all of it along.
    const square = placeBudget(GUITAR, { ...NONE, placeSquare: (0.5 * Math.PI) / 180 });
    expect(square.along).toBeCloseTo(0.08727, 5);
    expect(square.turn).toBe(0);
    // 0.2 % of the 30 mm that the paper carries, not of the scale: 0.06 mm.
    expect(placeBudget(GUITAR, { ...NONE, placePaper: 0.002 }).along).toBeCloseTo(0.06, 9);
    // A pin 0.1 loose is evenly anywhere within ±0.05: 0.05/√3 each, 0.0204 for the middle of two.
    expect(placeBudget(GUITAR, { ...NONE, placePin: 0.1 }).along).toBeCloseTo(0.05 / Math.sqrt(6), 9);
  });

  it('adds independent causes by their squares', () => {
    // JCGM 100 5.1.2: √(0.3² + 0.4²) = 0.5 for two that act straight along.
    const both = placeBudget(
      { ...GUITAR, height: 1 / Math.sin(0.01) },
      { ...NONE, placeParallax: 0.3, placeSquare: 0 },
    );
    expect(both.along).toBeCloseTo(0.3, 12);
    const tall = { ...GUITAR, height: 0.4 / Math.sin(0.01) };
    expect(placeBudget(tall, { ...NONE, placeParallax: 0.3, placeSquare: 0.01 }).along).toBeCloseTo(0.5, 12);
  });

  it('combines the four contributions of the GUM’s end gauge, H.1, as published', () => {
    // Four causes that move all of the bridge and turn nothing, as large in mm as those of H.1 are in nm.
    const [standard, comparison, coefficient, temperature] = GUM_H1.parts.map(({ effect }) => effect);
    if (standard === undefined || comparison === undefined || coefficient === undefined || temperature === undefined)
      throw new Error('H.1 has four contributions.');
    const found = placeBudget(
      { ...GUITAR, height: comparison / Math.sin(0.01), carried: 1 },
      { ...NONE, placeParallax: standard, placeSquare: 0.01, placePaper: coefficient, placePrint: temperature },
    );
    expect(found.along).toBeCloseTo(GUM_H1.sigma, 1);
    expect([found.aside, found.turn]).toEqual([0, 0]);
    // 25² of 31.7106²: 0.6215, by hand.
    expect(found.rows.find(({ source }) => source.id === 'placeParallax')?.share).toBeCloseTo(0.6215, 3);
  });

  it('takes what both ends share as wholly correlated, and what each has as its own', () => {
    // GUM equation 13 for the mean and the slope of two ends, each σ = 0.3: with correlation 1 the mean is off by
    // √((0.15 + 0.15)²) = 0.3 and nothing turns; without, the mean by 0.15·√2 = 0.2121.
    const shared = placeBudget(GUITAR, { ...NONE, placeParallax: 0.3 });
    expect([shared.along, shared.turn]).toEqual([0.3, 0]);
    const own = placeBudget(GUITAR, { ...NONE, placeTape: 0.3 });
    expect(own.along).toBeCloseTo(0.2121, 4);
    expect(own.aside).toBeCloseTo(0.2121, 4);
    // 0.3·√2/74, the pins’ distance, for the drill.
    expect(placeBudget(GUITAR, { ...NONE, placeDrill: 0.3 }).turn).toBeCloseTo(0.005733, 6);
  });

  it('takes a kept print’s doubt, the larger of both axes, until the maker says otherwise', () => {
    const kept = sourcesWithPrint({ printer: 'Bench laser', sigmaX: 0.0004, sigmaY: 0.0006, date: '2026-03-01' });
    const size = (own: Readonly<Record<string, number>>): number | undefined =>
      placeBudget(GUITAR, own, kept).rows.find(({ source }) => source.id === 'placePrint')?.size;
    expect(size({})).toBe(0.0006);
    expect(size({ placePrint: 0.002 })).toBe(0.002);
    expect(kept.find(({ id }) => id === 'placePrint')?.source).toContain('Bench laser');
    expect(sourcesWithPrint(null)).toBe(ERROR_SOURCES);
  });

  it('shares the pitch out over its causes, and names the worst with what halving it leaves', () => {
    const { rows, cents, first } = placeBudget(GUITAR, {});
    expect(rows.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(first.row.share).toBe(Math.max(...rows.map(({ share }) => share)));
    const halved = placeBudget(GUITAR, { [first.row.source.id]: first.row.size / 2 });
    expect(first.left).toBeCloseTo(halved.cents, 9);
    expect(cents).toBeGreaterThan(first.left);
  });

  it('has a source and a remedy beside every error', () => {
    for (const { source, remedy, usual } of ERROR_SOURCES) {
      expect(source.length).toBeGreaterThan(10);
      expect(remedy.length).toBeGreaterThan(10);
      expect(usual).toBeGreaterThan(0);
    }
  });

  it('takes no turn from a single pin', () => {
    expect(placeBudget({ ...GUITAR, apart: 0 }, { ...NONE, placeDrill: 0.2 }).turn).toBe(0);
    expect(() => placeBudget({ ...GUITAR, height: Number.NaN }, {})).toThrow(RangeError);
  });
});

describe('pinLooseness', () => {
  it('lets the bridge move by half the clearance and turn by clearance over distance', () => {
    const { shift, turn } = pinLooseness(0.2, 74);
    expect(shift).toBeCloseTo(0.1, 12);
    // 0.2 / 74 = 0.002703 = 0.155°.
    expect((turn * 180) / Math.PI).toBeCloseTo(0.155, 3);
    expect(() => pinLooseness(-0.1, 74)).toThrow(RangeError);
    expect(() => pinLooseness(0.1, 0)).toThrow(RangeError);
  });
});
