import { describe, expect, it } from 'vitest';
import { elasticAt } from '../../../src/core/intonation/elasticAt';
import { fitSetback } from '../../../src/core/intonation/fitSetback';
import { fretCents } from '../../../src/core/intonation/fretCents';
import { fretErrorParts } from '../../../src/core/intonation/fretErrorParts';
import { stringTension } from '../../../src/core/intonation/stringTension';
import type { SetbackFit, Setup, StringSpec } from '../../../src/core/intonation/types';
import { fitSaddleLine } from '../../../src/core/numeric/fitSaddleLine';
import { RULES_OF_THUMB } from '../../reference/intonation-published';
import {
  WORKED,
  WORKED_CHANGES,
  WORKED_PARTS,
  WORKED_SETUPS,
  WORKED_SPREAD,
  WORKED_STRINGS,
} from '../../reference/intonation-worked';

// Source of every expected value: an independent evaluation, see test/reference/intonation-worked.ts. Printed to 0.001 mm
// and 0.01 cents, so within half of that plus the rounding of the inputs' own digits.
const FRETS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const MM = 0.001;
const CENTS = 0.01;

function bestSetback(string: StringSpec, setup: Setup, frets: readonly number[], freeNut = false): SetbackFit {
  const result = fitSetback(string, setup, { frets, freeNut });
  if (!result.ok) throw new Error(result.issues[0]?.message);
  return result.value;
}
const cases = WORKED_STRINGS.map((string, i) => ({ i, string, setup: WORKED_SETUPS[i] as Setup }));
const at = (list: readonly number[], i: number): number => list[i] ?? Number.NaN;
const within = (value: number | undefined, expected: number, tolerance: number): void =>
  expect(Math.abs((value ?? Number.NaN) - expected)).toBeLessThanOrEqual(tolerance);

describe.each(cases)('$string.name', ({ i, string, setup }) => {
  it('has the tension, κ and bending length', () => {
    const tension = stringTension(string.elastic.massPerLength, 645, string.frequency);
    const state = elasticAt(string, 645, 645);
    within(tension, at(WORKED.tension, i), 0.06);
    within(state.kappa, at(WORKED.kappa, i), 0.06);
    within(state.b0 * 645, at(WORKED.bendingLength, i), MM);
  });

  it('is matched at the octave', () => {
    const octave = bestSetback(string, setup, [12]);
    within(octave.saddle, at(WORKED.octave, i), MM);
    within(octave.cents[0], 0, 1e-9);
  });

  it('is fitted over frets 1 to 12', () => {
    const best = bestSetback(string, setup, FRETS);
    within(best.saddle, at(WORKED.fit, i), MM);
    within(best.rms, at(WORKED.fitRms, i), CENTS);
    within(best.cents[0], at(WORKED.fitFret1, i), CENTS);
    within(best.cents[11], at(WORKED.fitFret12, i), CENTS);
    expect(best.nut).toBe(0);
  });

  it('is fitted with the nut free', () => {
    const best = bestSetback(string, setup, FRETS, true);
    within(best.saddle, at(WORKED.freeSaddle, i), MM);
    within(best.nut, at(WORKED.freeNut, i), MM);
  });

  it('has the four parts at no setback, which add up to the error', () => {
    const none = { saddle: 0, nut: 0 };
    const parts = fretErrorParts(string, setup, none, FRETS);
    const cents = fretCents(string, setup, none, FRETS);
    const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
    within(parts[11]?.length, at(WORKED_PARTS.length, i), CENTS);
    within(parts[11]?.tension, at(WORKED_PARTS.tension, i), CENTS);
    within(parts[11]?.density, at(WORKED_PARTS.density, i), 0.001);
    within(parts[11]?.bending, at(WORKED_PARTS.bending, i), CENTS);
    within(cents[11], at(WORKED_PARTS.total, i), CENTS);
    within(cents[0], at(WORKED_PARTS.fret1, i), CENTS);
    within(mean(parts.map(({ tension }) => tension)), at(WORKED_PARTS.meanTension, i), CENTS);
    within(mean(parts.map(({ bending }) => bending)), at(WORKED_PARTS.meanBending, i), CENTS);
    within(mean(cents), at(WORKED_PARTS.meanTotal, i), CENTS);
    parts.forEach((part, n) => {
      within(part.length + part.density + part.tension + part.bending, at(cents, n), 1e-9);
    });
  });

  it.each(WORKED_CHANGES)('moves as the table says with $change', ({ change, by, octave, fit: fitted }) => {
    const elastic = { ...string.elastic };
    const changed = { ...setup };
    if (change === 'hex') elastic.coreShape = (i > 1 ? 'hex' : 'round') as typeof elastic.coreShape;
    else if (change === 'coreDiameter' || change === 'modulus') elastic[change] += by;
    else changed[change] = (changed[change] ?? 0) + by;
    if (change === 'pushDown') changed.fingerDistance = 8;
    const other = { ...string, elastic };
    // Printed to 0.01 mm.
    within(bestSetback(other, changed, [12]).saddle - bestSetback(string, setup, [12]).saddle, at(octave, i), 0.0065);
    within(bestSetback(other, changed, FRETS).saddle - bestSetback(string, setup, FRETS).saddle, at(fitted, i), 0.0065);
  });
});

describe('a straight saddle through the worked example', () => {
  const place = (i: number): number => WORKED_SPREAD / 2 - (WORKED_SPREAD / 5) * i;
  const points = (frets: readonly number[]) =>
    cases.map(({ i, string, setup }) => ({ x: place(i), setback: bestSetback(string, setup, frets).saddle }));
  const degrees = (slope: number): number => (Math.atan(slope) * 180) / Math.PI;
  const line = (...args: Parameters<typeof fitSaddleLine>) => {
    const result = fitSaddleLine(...args);
    if (!result.ok) throw new Error(result.issues[0]?.message);
    return result.value;
  };

  it.each([
    ['fit', FRETS, WORKED.fitLine],
    ['octave', [12], WORKED.octaveLine],
  ] as const)('least squares, %s', (_name, frets, expected) => {
    const saddle = line(points(frets), 'least-squares');
    within(saddle.centre, expected.centre, MM);
    within(degrees(saddle.slope), -expected.angleDeg, 0.001); // bass farther back, so the slope is negative
    cases.forEach(({ i, string, setup }) => {
      within(saddle.misses[i], at(expected.misses, i), MM);
      const setback = saddle.centre + saddle.slope * place(i);
      within(fretCents(string, setup, { saddle: setback, nut: 0 }, [12])[0], at(expected.fret12, i), CENTS);
    });
  });

  it('leaves the rms of the table on the fitted line', () => {
    const saddle = line(points(FRETS), 'least-squares');
    cases.forEach(({ i, string, setup }) => {
      const cents = fretCents(string, setup, { saddle: saddle.centre + saddle.slope * place(i), nut: 0 }, FRETS);
      within(Math.sqrt(cents.reduce((sum, e) => sum + e * e, 0) / 12), at(WORKED.fitLine.rms, i), CENTS);
    });
  });

  it.each([
    ['fit', FRETS, WORKED.minimax.fit],
    ['octave', [12], WORKED.minimax.octave],
  ] as const)('least worst miss, %s', (_name, frets, expected) => {
    const saddle = line(points(frets), 'minimax');
    within(saddle.centre, expected.centre, MM);
    within(degrees(saddle.slope), -expected.angleDeg, 0.001);
    within(Math.max(...saddle.misses.map(Math.abs)), expected.worst, MM);
  });

  it('fixed at 3° (worked by hand)', () => {
    const { slope, centre, misses } = WORKED.threeDegrees;
    const saddle = line(points(FRETS), 'least-squares', slope);
    within(saddle.centre, centre, MM);
    cases.forEach(({ i }) => {
      within(saddle.misses[i], at(misses, i), MM);
    });
  });

  it('records how far the trade’s rules of thumb lie from the model', () => {
    // Distances computed here; they document the model, there is no outside value for them.
    const { treble, bass, middle } = RULES_OF_THUMB;
    const distances = [FRETS, [12]].map((frets) => {
      const saddle = line(points(frets), 'least-squares');
      const ends = (x: number) => saddle.centre + saddle.slope * x;
      return [treble - ends(27), bass - ends(-27), middle - saddle.centre].map((mm) => Math.round(mm * 100) / 100);
    });
    expect(distances).toEqual([
      [-0.34, -0.15, 0.78],
      [-0.21, 0.18, 1.02],
    ]);
  });
});
