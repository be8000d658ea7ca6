import { describe, expect, it } from 'vitest';
import type { DoubtfulInput } from '../../../src/core/intonation/doubtfulInputs';
import { fitSetback } from '../../../src/core/intonation/fitSetback';
import { setbackSensitivity } from '../../../src/core/intonation/setbackSensitivity';
import type { Setup, StringSpec } from '../../../src/core/intonation/types';
import { WORKED_CHANGES, WORKED_SETUPS, WORKED_STRINGS } from '../../reference/intonation-worked';

const FIT = { frets: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], freeNut: false };
const cases = WORKED_STRINGS.map((string, i) => ({ i, string, setup: WORKED_SETUPS[i] as Setup }));

function sensitivity(string: StringSpec, setup: Setup, doubts: Parameters<typeof setbackSensitivity>[3]) {
  const result = setbackSensitivity(string, setup, FIT, doubts);
  if (!result.ok) throw new Error(result.issues[0]?.message);
  return result.value;
}

describe('setbackSensitivity', () => {
  const tabled = WORKED_CHANGES.filter(
    ({ change }) => change !== 'hex' && change !== 'pushDown' && change !== 'fingerDistance',
  );

  // Independent evaluation, printed to 0.01 mm, for one-sided changes. The shift here is the mean of both sides, which
  // leaves out the curvature: for the action, from dS ≈ κ·h²/X0, that is 270·0.25²/645 = 0.026 mm at most.
  it.each(cases)('$string.name shifts as the table says', ({ i, string, setup }) => {
    for (const { change, by, fit } of tabled) {
      const { shares } = sensitivity(string, setup, { [change]: by });
      expect(Math.abs((shares[0]?.shift ?? Number.NaN) - (fit[i] as number)), change).toBeLessThan(0.03);
    }
  });

  it.each(cases)('$string.name agrees with full fits to 2 %', ({ string, setup }) => {
    const place = (input: DoubtfulInput, by: number): number => {
      const elastic =
        input in string.elastic
          ? { ...string.elastic, [input]: string.elastic[input as 'modulus'] + by }
          : string.elastic;
      const moved = input in setup ? { ...setup, [input]: (setup[input as 'action'] ?? 0) + by } : setup;
      const result = fitSetback({ ...string, elastic }, moved, FIT);
      return result.ok ? result.value.saddle : Number.NaN;
    };
    const doubts = { action: 0.1, nutHeight: 0.05, relief: 0.05, coreDiameter: 0.01, modulus: 5, massPerLength: 0.02 };
    for (const { input, shift } of sensitivity(string, setup, doubts).shares) {
      const sigma = doubts[input as keyof typeof doubts];
      const full = (place(input, sigma) - place(input, -sigma)) / 2;
      expect(Math.abs(shift / full - 1), input).toBeLessThan(0.02);
    }
  });

  it('adds the shares as squares and puts the largest first', () => {
    const { string, setup } = cases[5] as (typeof cases)[number];
    const { sigma, shares } = sensitivity(string, setup, { action: 0.1, coreDiameter: 0.0254, nutHeight: 0.1 });
    expect(shares.map(({ input }) => input)).toEqual(['coreDiameter', 'action', 'nutHeight']);
    expect(sigma).toBeCloseTo(Math.hypot(...shares.map(({ shift }) => shift)), 12);
  });

  it('passes over figures that the string does not use', () => {
    const { setup } = cases[0] as (typeof cases)[number];
    const measured: StringSpec = { name: 'm', frequency: 330, elastic: { kind: 'measured', kappa: 50, b0: 0.002 } };
    const { shares } = sensitivity(measured, setup, { coreDiameter: 0.1, modulus: 5, kappa: 3, b0: 0.0001 });
    expect(shares.map(({ input }) => input).sort()).toEqual(['b0', 'kappa']);
    expect(shares.every(({ shift }) => shift > 0)).toBe(true);
  });

  it('counts a finger that cannot press less than not at all, from above only', () => {
    const { string, setup } = cases[0] as (typeof cases)[number];
    const { shares } = sensitivity(string, { ...setup, fingerDistance: 8 }, { pushDown: 0.3 });
    expect(shares[0]?.shift).toBeGreaterThan(0.5);
  });

  it('makes next to nothing of a doubt that is next to nothing', () => {
    const { string, setup } = cases[5] as (typeof cases)[number];
    const { sigma, shares } = sensitivity(string, setup, { action: Number.MIN_VALUE, coreDiameter: 1e-15 });
    expect(shares).toHaveLength(2);
    expect(sigma).toBeLessThan(1e-12);
  });

  it('is zero without doubts, and names a doubt below 0', () => {
    const { string, setup } = cases[0] as (typeof cases)[number];
    expect(sensitivity(string, setup, {}).sigma).toBe(0);
    const bad = setbackSensitivity(string, { ...setup, action: -1 }, FIT, { action: -1 });
    expect(!bad.ok && bad.issues.map(({ path }) => path)).toEqual(['doubts.action', 'setup.action']);
  });
});
