import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../src/core/numeric/seededRandom';
import { solvePrintFactor } from '../../../../src/core/sheets/proof/solvePrintFactor';
import { SHEARED, WRONG_PRINTS } from '../../../reference/printProof';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';

const part = { x: 152.4, y: 38.1 };

describe('solvePrintFactor', () => {
  it.each(WRONG_PRINTS)('$source', ({ nominal, read, factor, verdict, says }) => {
    const found = answerOf(
      solvePrintFactor({
        nominalX: nominal[0],
        nominalY: nominal[1],
        readX: read[0],
        readY: read[1],
        sigma: 0.1,
        part,
      }),
    );
    expect(found.factorX).toBeCloseTo(factor[0], 4);
    expect(found.factorY).toBeCloseTo(factor[1], 4);
    expect(found.verdict).toBe(verdict);
    if (says === null) expect(found.hint).toBeNull();
    else expect(found.hint).toContain(says);
  });

  // 0.2 % of 152.4 is 0.3048 mm, of 38.1 half as much as a quarter: hand arithmetic.
  it('tells the error at the part, and how sure the factors are', () => {
    const found = answerOf(
      solvePrintFactor({ nominalX: 150, nominalY: 150, readX: 150.3, readY: 149.7, sigma: 0.15, part }),
    );
    expect(found.errorAtPart.x).toBeCloseTo(0.3048, 9);
    expect(found.errorAtPart.y).toBeCloseTo(-0.0762, 9);
    expect(found.verdict).toBe('correct');
    // Factor 150/150.3; ± 0.15 of 150.3 is 0.1 %.
    expect(found.sigmaX).toBeCloseTo((150 / 150.3) * (0.15 / 150.3), 9);
    expect(found.sure).toBe(false);
  });

  it('measures how far out of square, on a square or on the frame of the long lines', () => {
    const { side, degrees, a, b } = SHEARED;
    const nominal = side * Math.SQRT2;
    const readings = { nominalX: 180, nominalY: 260, readX: 180, readY: 260, sigma: 0.05, part };
    const askew = answerOf(solvePrintFactor({ ...readings, diagonals: { nominal, a, b } }));
    expect(askew.skewDeg).toBeCloseTo(degrees, 3);
    expect(askew.verdict).toBe('reprint');
    expect(askew.hint).toContain('0.30° out of square');
    expect(answerOf(solvePrintFactor({ ...readings, diagonals: { nominal, a: b, b: a } })).skewDeg).toBeCloseTo(
      -0.3,
      3,
    );
    // 100 × 150 with 180.28 both ways, read half a millimetre apart: sin s = (a² − b²)/(4·100·150) = 0.0030046.
    const frame = answerOf(
      solvePrintFactor({
        ...readings,
        ...{ nominalX: 100, nominalY: 150, readX: 100, readY: 150 },
        diagonals: { nominal: 180.2776, a: 180.5276, b: 180.0276 },
      }),
    );
    expect(frame.skewDeg).toBeCloseTo((0.0030046 * 180) / Math.PI, 4);
    expect(answerOf(solvePrintFactor(readings)).skewDeg).toBe(0);
  });

  it('is not sure with a half-millimetre rule, and is with a fine one', () => {
    const reading = { nominalX: 180, nominalY: 260, readX: 180, readY: 260, part };
    expect(answerOf(solvePrintFactor(reading))).toMatchObject({ verdict: 'true', sure: false });
    expect(answerOf(solvePrintFactor({ ...reading, sigma: 0.08 }))).toMatchObject({ verdict: 'true', sure: true });
  });

  // Prints from 1.5 % small to 1.5 % large, readings with noise of the sigma that is stated; the verdict on the exact
  // lengths is the truth.
  it('is right at least 95 times of 100 when it says that it is sure', () => {
    const { uniform, normal } = seededRandom(5);
    const counts = { sure: 0, right: 0 };
    for (let count = 0; count < 1000; count += 1) {
      const sigma = 0.02 + 0.2 * uniform();
      const nominal = { nominalX: 180, nominalY: 260, part };
      const ratio = 1 + 0.03 * (uniform() - 0.5);
      const truth = { readX: 180 * ratio, readY: 260 * (ratio + 0.004 * (uniform() - 0.5)) };
      const exact = answerOf(solvePrintFactor({ ...nominal, ...truth, sigma: 1e-9 }));
      const read = answerOf(
        solvePrintFactor({
          ...nominal,
          readX: truth.readX + sigma * normal(),
          readY: truth.readY + sigma * normal(),
          sigma,
        }),
      );
      if (!read.sure) continue;
      counts.sure += 1;
      if (read.verdict === exact.verdict) counts.right += 1;
    }
    expect(counts.sure).toBeGreaterThan(300);
    expect(counts.right / counts.sure).toBeGreaterThanOrEqual(0.95);
  });

  it('refuses lengths that are none', () => {
    const reading = { nominalX: 180, nominalY: 260, readX: 180, readY: 260 };
    expect(codesOf(solvePrintFactor({ ...reading, readX: 0 }))).toEqual(['print.length']);
    expect(codesOf(solvePrintFactor({ ...reading, sigma: Number.NaN, readY: -1 }))).toHaveLength(2);
  });
});
