import { describe, expect, it } from 'vitest';
import type { SaddlePlace } from '../../../../src/core/bridge/types';
import { centsGrid } from '../../../../src/core/drawing/plots/centsGrid';
import { modelString } from '../../../../src/core/intonation/modelString';
import type { StringModel } from '../../../../src/core/intonation/stringModels';
import { WORKED, WORKED_SETUPS, WORKED_STRINGS } from '../../../reference/intonation-worked';
import { valueOf as answerOf } from '../../document/valueOf';
import { smallSaddle } from './smallSaddle';

// Expected values: the independent evaluation that test/reference/intonation-worked.ts names, printed to 0.01 cents.
const FRETS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const WITHIN = 0.02;

const models: readonly StringModel[] = WORKED_STRINGS.map((spec, i) => {
  const setup = WORKED_SETUPS[i];
  if (setup === undefined) throw new Error('A set-up for every string.');
  return {
    ...answerOf(modelString(spec, setup, { frets: FRETS, freeNut: false }, {})),
    id: `s${i + 1}`,
    name: spec.name,
    spec,
    setup,
    tension: WORKED.tension[i] ?? 0,
  };
});

/** The worked example's straight line; left: how far each shaped string still misses its mark, mm. */
const saddle = (left: readonly number[]): SaddlePlace => {
  const [shape] = smallSaddle.strings;
  if (shape === undefined) throw new Error('A string.');
  return {
    centre: 645 + WORKED.fitLine.centre,
    slope: -0.04052,
    strings: WORKED.fit.map((wanted, i) => ({
      ...shape,
      id: `s${i + 1}`,
      wanted,
      line: wanted + (WORKED.fitLine.misses[i] ?? 0),
      miss: WORKED.fitLine.misses[i] ?? 0,
      crown: { ...shape.crown, left: left[i] ?? 0 },
    })),
  };
};
const reached = saddle([0, 0, 0, 0, 0, 0]);
const rms = (cents: readonly number[]): number => Math.sqrt(cents.reduce((sum, e) => sum + e * e, 0) / cents.length);
const expectAll = (values: readonly (number | undefined)[], expected: readonly number[]): void => {
  expect(values).toHaveLength(expected.length);
  for (const [i, value] of values.entries())
    expect(Math.abs((value ?? Number.NaN) - (expected[i] ?? Number.NaN)), `string ${i + 1}`).toBeLessThanOrEqual(
      WITHIN,
    );
};

describe('centsGrid', () => {
  it('on the straight saddle leaves what the worked example leaves', () => {
    const grid = centsGrid(models, reached, FRETS, 'straight');
    expectAll(grid.map(rms), [0.35, 1.77, 1.32, 0.89, 0.78, 1.36]);
    expectAll(
      grid.map((row) => row[11]),
      [-0.67, 2.24, -2.65, -1.87, -1.54, 0.71],
    );
  });

  it('with the crown shaped to every mark leaves what each string’s own fit leaves', () => {
    const grid = centsGrid(models, reached, FRETS, 'shaped');
    expectAll(grid.map(rms), [0.3, 0.59, 0.34, 0.49, 0.62, 0.93]);
    expectAll(
      grid.map((row) => row[0]),
      [0.47, 0.94, 0.55, 0.81, 1.04, 1.58],
    );
    expectAll(
      grid.map((row) => row[11]),
      [-0.37, -0.7, -0.4, -0.57, -0.71, -1.05],
    );
  });

  it('counts what a thin crown leaves', () => {
    // 0.388 mm too far ahead at 1731.234 / 645 = 2.6841 cents a mm is 1.04 sharp: −0.70 + 1.04 (hand arithmetic).
    const grid = centsGrid(models, saddle([0, -0.388, 0, 0, 0, 0]), [12], 'shaped');
    expectAll(
      grid.map((row) => row[0]),
      [-0.37, 0.34, -0.4, -0.57, -0.71, -1.05],
    );
  });

  it('finds a string’s place by what it is, not by its order', () => {
    const turned = { ...reached, strings: [...reached.strings].reverse() };
    expect(centsGrid(models, turned, FRETS, 'straight')).toEqual(centsGrid(models, reached, FRETS, 'straight'));
    expect(() => centsGrid(models, { ...reached, strings: reached.strings.slice(1) }, FRETS, 'straight')).toThrow(
      /E4/u,
    );
  });
});
