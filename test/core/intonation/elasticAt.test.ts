import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elasticAt } from '../../../src/core/intonation/elasticAt';
import { fitSetback } from '../../../src/core/intonation/fitSetback';
import type { Setup, StringSpec } from '../../../src/core/intonation/types';

const measured = (frequency: number, at?: { scaleLength: number; frequency: number }): StringSpec => ({
  name: 'nylon',
  frequency,
  elastic: { kind: 'measured', kappa: 48.2, b0: 0.0019, ...(at ? { at } : {}) }, // nylon E4, Anderson & Beausoleil (2024)
});
const ON_650 = { scaleLength: 650, frequency: 330 };

describe('a measured string carried elsewhere', () => {
  it('to 432 mm at the same pitch (by hand)', () => {
    // (650/432)² = 2.263911; κ' = 48.2·2.263911 = 109.1205; B0' = 0.0019·2.263911 = 0.004301431.
    const { kappa, b0 } = elasticAt(measured(330, ON_650), 432, 432);
    expect(kappa).toBeCloseTo(109.1205, 4);
    expect(b0).toBeCloseTo(0.004301431, 8);
  });

  it('to 432 mm and A4 = 440 (by hand)', () => {
    // 330/440 = 0.75: κ' = 109.1205·0.5625 = 61.3803; B0' = 0.004301431·0.75 = 0.003226073.
    const { kappa, b0 } = elasticAt(measured(440, ON_650), 432, 432);
    expect(kappa).toBeCloseTo(61.3803, 4);
    expect(b0).toBeCloseTo(0.003226073, 8);
  });

  it('stays as it is where it was measured, and with no place given', () => {
    expect(elasticAt(measured(330, ON_650), 650, 653)).toEqual({ kappa: 48.2, b0: 0.0019 });
    expect(elasticAt(measured(440), 432, 432)).toMatchObject({ kappa: 48.2, b0: 0.0019 });
  });

  it('follows the law that constant core, modulus and mass give', () => {
    const length = fc.double({ min: 300, max: 700, noNaN: true });
    const pitch = fc.double({ min: 60, max: 500, noNaN: true });
    fc.assert(
      fc.property(length, length, pitch, pitch, (from, to, low, high) => {
        const core = { kind: 'core', massPerLength: 1.2, coreDiameter: 0.4, coreShape: 'round', modulus: 200 } as const;
        const there = elasticAt({ name: 'a', frequency: low, elastic: core }, from, from);
        const carried = elasticAt(
          {
            name: 'b',
            frequency: high,
            elastic: { kind: 'measured', ...there, at: { scaleLength: from, frequency: low } },
          },
          to,
          to,
        );
        const here = elasticAt({ name: 'c', frequency: high, elastic: core }, to, to);
        expect(carried.kappa / here.kappa).toBeCloseTo(1, 12);
        expect(carried.b0 / here.b0).toBeCloseTo(1, 12);
      }),
      { seed: 7 },
    );
  });

  it('gives the same fit as the figures carried by hand', () => {
    const setup: Setup = {
      scaleLength: 432,
      nutHeight: 0.5,
      action: 2.5,
      relief: 0,
      reliefFrets: [1, 14],
      fingerDistance: 0,
    };
    const options = { frets: [1, 5, 12], freeNut: false };
    const carried = fitSetback(measured(440, ON_650), setup, options);
    const byHand = fitSetback(
      { name: 'hand', frequency: 440, elastic: { kind: 'measured', kappa: 61.3803, b0: 0.003226073 } },
      setup,
      options,
    );
    expect(carried.ok && byHand.ok && carried.value.saddle - byHand.value.saddle).toBeCloseTo(0, 4);
  });
});
