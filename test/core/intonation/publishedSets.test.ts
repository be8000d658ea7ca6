import { describe, expect, it } from 'vitest';
import { fitSetback, fitSetbackBy } from '../../../src/core/intonation/fitSetback';
import { fretCentsBy } from '../../../src/core/intonation/fretCents';
import { exactLaw, type ModelLaw } from '../../../src/core/intonation/modelLaw';
import { setbackStart } from '../../../src/core/intonation/setbackStart';
import type { SetbackFit, StringSpec } from '../../../src/core/intonation/types';
import published from '../../reference/intonation-nylon.json';

// Source of every expected value: test/reference/intonation-nylon.json, the setback tables of Anderson & Beausoleil (2024).
const FRETS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const SETUP = {
  scaleLength: published.conditions.scaleLength,
  nutHeight: published.conditions.nutHeight,
  action: published.conditions.action_at_12_equivalent,
  relief: published.conditions.relief,
  reliefFrets: [1, 14] as const,
  fingerDistance: published.conditions.fingerDistance,
};
const OPTIONS = { frets: FRETS, freeNut: true };

/** The tables' own bending law, B_n = 2^(n/12)·B0, and saddle height held while the saddle moves. */
const paperLaw: ModelLaw = { bending: (b0, _length, _tension, pitchRatio) => b0 * pitchRatio, held: 'height' };

const stringOf = (row: { kappa: number; b0: number }): StringSpec => ({
  name: 'as measured',
  frequency: 330, // has no effect on a string measured at this setup
  elastic: { kind: 'measured', kappa: row.kappa, b0: row.b0 },
});

function fitBy(law: ModelLaw, row: { kappa: number; b0: number }): SetbackFit {
  const fit = fitSetbackBy(law, stringOf(row), SETUP, OPTIONS);
  if (!fit.ok) throw new Error(fit.issues[0]?.message);
  return fit.value;
}

const rowsOf = (evaluation: string) =>
  published.sets
    .filter((set) => set.evaluation === evaluation)
    .flatMap((set) => set.strings.map((row) => [`${set.name} ${row.string}`, row] as const));

describe('tables made by numerical minimum', () => {
  it.each(rowsOf('gamma'))('%s', (_name, row) => {
    const fit = fitBy(paperLaw, row);
    expect(Math.abs(fit.saddle - row.printed.saddle)).toBeLessThan(0.01);
    expect(Math.abs(fit.nut - row.printed.nut)).toBeLessThan(0.005);
    expect(Math.abs(fit.rms - row.printed.rms)).toBeLessThan(0.007);
  });

  it.each(rowsOf('gamma'))('%s with the action held instead of the saddle height', (_name, row) => {
    const fit = fitBy({ ...paperLaw, held: 'action' }, row);
    expect(Math.abs(fit.saddle - row.printed.saddle)).toBeLessThan(0.012);
    expect(Math.abs(fit.nut - row.printed.nut)).toBeLessThan(0.005);
    expect(Math.abs(fit.rms - row.printed.rms)).toBeLessThan(0.007);
  });
});

describe('tables made by the linear solution, which is where the fit sets out', () => {
  it.each(rowsOf('closed'))('%s', (_name, row) => {
    const start = setbackStart(row, SETUP, OPTIONS);
    const cents = fretCentsBy(paperLaw, stringOf(row), SETUP, start, FRETS);
    const rms = Math.sqrt(cents.reduce((sum, e) => sum + e * e, 0) / cents.length);
    expect(Math.abs(start.saddle - row.printed.saddle)).toBeLessThan(0.01);
    expect(Math.abs(start.nut - row.printed.nut)).toBeLessThan(0.005);
    expect(Math.abs(rms - row.printed.rms)).toBeLessThan(0.007);
  });
});

describe('exact bending law, against an independent evaluation (not published)', () => {
  const all = [...rowsOf('gamma'), ...rowsOf('closed')];

  it.each(all)('%s', (_name, row) => {
    const fit = fitBy({ ...exactLaw, held: 'height' }, row);
    expect(Math.abs(fit.saddle - row.exact.saddle)).toBeLessThan(1e-4);
    expect(Math.abs(fit.nut - row.exact.nut)).toBeLessThan(1e-4);
    expect(Math.abs(fit.rms - row.exact.rms)).toBeLessThan(1e-4);
  });

  it.each(all)('%s as the app fits it, action held', (_name, row) => {
    const fit = fitSetback(stringOf(row), SETUP, OPTIONS);
    expect(fit.ok && Math.abs(fit.value.saddle - row.exact.saddle)).toBeLessThan(0.012);
    expect(fit.ok && Math.abs(fit.value.nut - row.exact.nut)).toBeLessThan(0.005);
    expect(fit.ok && Math.abs(fit.value.rms - row.exact.rms)).toBeLessThan(0.007);
  });
});
