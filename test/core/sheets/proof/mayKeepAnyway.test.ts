import { describe, expect, it } from 'vitest';
import { correctionWords } from '../../../../src/core/sheets/correctionWords';
import { mayKeepAnyway } from '../../../../src/core/sheets/proof/mayKeepAnyway';
import { correctionBy, profileFrom } from '../../../../src/core/sheets/proof/printerProfile';
import { solvePrintFactor } from '../../../../src/core/sheets/proof/solvePrintFactor';
import { valueOf as answerOf } from '../../document/valueOf';

/** A print of lines of 180 and 240 that came out at these shares; diagonals of a square of 100, 141.42 long. */
const printAt = (x: number, y: number, diagonals?: readonly [number, number]) =>
  answerOf(
    solvePrintFactor({
      nominalX: 180,
      nominalY: 240,
      readX: 180 * x,
      readY: 240 * y,
      ...(diagonals && { diagonals: { nominal: 141.4214, a: diagonals[0], b: diagonals[1] } }),
    }),
  );

describe('mayKeepAnyway', () => {
  it.each([
    [0.97, 0.97],
    [0.962, 0.967],
    [1.03, 1.03],
  ])('is offered for a print at %s and %s, which stays one to make anew', (x, y) => {
    expect(printAt(x, y).verdict).toBe('reprint');
    expect(mayKeepAnyway(printAt(x, y))).toBe(true);
  });

  it.each([
    ['true', 1, 1],
    ['correct', 0.996, 1.001],
    ['reprint', 0.98, 0.95],
    ['refuse', 0.85, 0.85],
  ] as const)('is not for one that is %s at %s and %s', (verdict, x, y) => {
    expect(printAt(x, y).verdict).toBe(verdict);
    expect(mayKeepAnyway(printAt(x, y))).toBe(false);
  });

  it('is not for a sheet that went in askew: 0.30° by its diagonals, worked by hand from a² − b² = 4·100²·sin s', () => {
    // 4 · 100² · sin 0.30° = 209.4; 141.79² − 141.05² = 209.3.
    expect(mayKeepAnyway(printAt(0.97, 0.97, [141.79 * 0.97, 141.05 * 0.97]))).toBe(false);
    expect(mayKeepAnyway(printAt(0.97, 0.97, [141.4214 * 0.97, 141.4214 * 0.97]))).toBe(true);
  });

  it('is said on the profile, and by what every page tells of its correction', () => {
    const about = { id: 'p', printer: 'Copy shop', paper: 'a4', date: '2026-11-24', againstAdvice: true } as const;
    const profile = answerOf(profileFrom(printAt(0.97, 0.97), { width: 210, height: 297 }, null, about));
    expect(profile.againstAdvice).toBe(true);
    // 1/0.97 = 1.0309.
    expect(correctionWords(correctionBy(profile, { width: 210, height: 297 }))).toBe(
      'print correction 1.0309 × 1.0309, Copy shop, 2026-11-24, kept against advice',
    );
  });
});
