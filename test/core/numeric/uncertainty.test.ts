import { describe, expect, it } from 'vitest';
import { combineUncertainty } from '../../../src/core/numeric/combineUncertainty';
import { seededRandom } from '../../../src/core/numeric/seededRandom';
import { spreadOf } from '../../../src/core/numeric/spreadOf';
import { studentT } from '../../../src/core/numeric/studentT';
import { GUM_H1, GUM_H2, JCGM_101_ADDITIVE } from '../../reference/statistics';

describe('combineUncertainty', () => {
  it('meets the end gauge of the GUM, H.1', () => {
    const { sigma, degreesOfFreedom } = combineUncertainty(GUM_H1.parts);
    expect(sigma).toBeCloseTo(GUM_H1.sigma, 1);
    expect(degreesOfFreedom).toBeCloseTo(GUM_H1.degreesOfFreedom, 1);
    const factor = studentT(0.99, Math.floor(degreesOfFreedom));
    expect(factor).toBeCloseTo(GUM_H1.factor99, 2);
    expect(Math.round(factor * sigma)).toBe(GUM_H1.expanded99);
  });

  it('meets resistance and reactance measured together, H.2', () => {
    const { volt, ampere, phase, correlation, ohm, sigma } = GUM_H2;
    const z = volt.mean / ampere.mean;
    const [cos, sin] = [Math.cos(phase.mean), Math.sin(phase.mean)];
    expect(z * cos).toBeCloseTo(ohm.r, 1);
    expect(z * sin).toBeCloseTo(ohm.x, 1);
    expect(z).toBeCloseTo(ohm.z, 1);
    const pairs = [
      [1, correlation.voltAmpere, correlation.voltPhase],
      [correlation.voltAmpere, 1, correlation.amperePhase],
      [correlation.voltPhase, correlation.amperePhase, 1],
    ];
    const between = (i: number, j: number): number => pairs[i]?.[j] ?? 0;
    const parts = (byPhase: number, share: number) => [
      { effect: (share / ampere.mean) * volt.sigma },
      { effect: (-share * z * ampere.sigma) / ampere.mean },
      { effect: byPhase * phase.sigma },
    ];
    expect(combineUncertainty(parts(-z * sin, cos), between).sigma).toBeCloseTo(sigma.r, 2);
    expect(combineUncertainty(parts(z * cos, sin), between).sigma).toBeCloseTo(sigma.x, 2);
    expect(combineUncertainty(parts(0, 1), between).sigma).toBeCloseTo(sigma.z, 2);
    expect(combineUncertainty(parts(-z * sin, cos)).sigma).toBeCloseTo(sigma.rUncorrelated, 2);
  });

  it('refuses what cannot be', () => {
    expect(() => combineUncertainty([{ effect: Number.NaN }])).toThrow(RangeError);
    expect(() => combineUncertainty([{ effect: 1 }, { effect: 1 }], () => -2)).toThrow(RangeError);
  });
});

describe('sampling', () => {
  const SAMPLES = 200_000;
  const { uniform, normal } = seededRandom(11);
  const rectangular = (): number => Math.sqrt(12) * (uniform() - 0.5);
  const sums = (draw: () => number): Float64Array => Float64Array.from({ length: SAMPLES }, draw).sort();

  // With 200,000 samples the ends of the interval scatter by about 0.4 % of the standard deviation, one sigma.
  it.each([
    ['normal', () => normal() + normal() + normal() + normal(), JCGM_101_ADDITIVE.normal],
    ['rectangular', () => rectangular() + rectangular() + rectangular() + rectangular(), JCGM_101_ADDITIVE.rectangular],
    ['one wide', () => rectangular() + rectangular() + rectangular() + 10 * rectangular(), JCGM_101_ADDITIVE.oneWide],
  ] as const)('meets the additive model of JCGM 101 with %s inputs', (_, draw, { sigma, half }) => {
    const spread = spreadOf(sums(draw));
    expect(Math.abs(spread.mean)).toBeLessThan(0.02 * sigma);
    expect(spread.sigma / sigma).toBeCloseTo(1, 2);
    expect(spread.high / half).toBeCloseTo(1, 1.7);
    expect(-spread.low / half).toBeCloseTo(1, 1.7);
  });
});
