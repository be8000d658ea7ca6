import { describe, expect, it } from 'vitest';
import { correctionBy, profileFrom } from '../../../../src/core/sheets/proof/printerProfile';
import { solvePrintFactor } from '../../../../src/core/sheets/proof/solvePrintFactor';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';

const UPRIGHT = { width: 210, height: 297 };
const LYING = { width: 297, height: 210 };
const ABOUT = { id: 'p', printer: 'Bench laser', paper: 'a4', date: '2026-11-25' };
/** Reads 179.46 for 180 and 240.24 for 240: factors 1.003009 and 0.999001, by hand. */
const FOUND = answerOf(solvePrintFactor({ nominalX: 180, nominalY: 240, readX: 179.46, readY: 240.24, sigma: 0.05 }));

describe('profiles of printers', () => {
  it('keep the factors of the paper as it lies upright', () => {
    const upright = answerOf(profileFrom(FOUND, UPRIGHT, null, ABOUT));
    expect(upright.factorX).toBeCloseTo(1.003009, 6);
    expect(upright.factorY).toBeCloseTo(0.999001, 6);
    // 0.05 of 180 is 0.0278 %, of 240 0.0208 %.
    expect(upright.sigmaX).toBeCloseTo(0.000279, 5);
    expect(upright.sigmaY).toBeCloseTo(0.000208, 5);
    const lying = answerOf(profileFrom(FOUND, LYING, null, ABOUT));
    expect([lying.factorX, lying.factorY]).toEqual([upright.factorY, upright.factorX]);
    expect([lying.sigmaX, lying.sigmaY]).toEqual([upright.sigmaY, upright.sigmaX]);
  });

  it('correct a page along its own axes, and name printer and day', () => {
    const profile = answerOf(profileFrom(FOUND, UPRIGHT, null, ABOUT));
    const { factorX, factorY } = profile;
    const said = { name: 'Bench laser', date: '2026-11-25' };
    expect(correctionBy(profile, UPRIGHT)).toEqual({ factorX, factorY, ...said });
    expect(correctionBy(profile, LYING)).toEqual({ factorX: factorY, factorY: factorX, ...said });
  });

  // A print that carries 1.002 and is still read 0.1 % short wants 1.002 · 1.001001 = 1.003003.
  it('add what a corrected print still lacks to the correction that it carries', () => {
    const left = answerOf(solvePrintFactor({ nominalX: 180, nominalY: 240, readX: 179.82, readY: 240, sigma: 0.05 }));
    const carried = { factorX: 1.002, factorY: 0.999, name: 'Bench laser', date: '2026-11-24' };
    const profile = answerOf(profileFrom(left, UPRIGHT, carried, ABOUT));
    expect(profile.factorX).toBeCloseTo(1.003003, 6);
    expect(profile.factorY).toBeCloseTo(0.999, 9);
  });

  it('are none for a print that no factor mends', () => {
    const far = answerOf(solvePrintFactor({ nominalX: 180, nominalY: 240, readX: 160, readY: 240, sigma: 0.05 }));
    expect(codesOf(profileFrom(far, UPRIGHT, null, ABOUT))).toEqual(['print.factor']);
  });
});
