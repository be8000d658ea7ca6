import { describe, expect, it } from 'vitest';
import type { InstrumentString } from '../../../src/core/document/types';
import { DOUBTFUL_INPUTS } from '../../../src/core/intonation/doubtfulInputs';
import { helpsMost } from '../../../src/core/intonation/helpsMost';
import { fitOptions, stringModels } from '../../../src/core/intonation/stringModels';
import { doubtsFor, USUAL_DOUBTS } from '../../../src/core/intonation/usualDoubts';
import { WORKED, WORKED_SETUPS } from '../../reference/intonation-worked';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';

const places = [27, 16.2, 5.4, -5.4, -16.2, -27].map((saddleX, index) => ({
  id: `s${index + 1}`,
  name: `${index + 1}`,
  nutX: 0,
  saddleX,
}));
const { fit } = steelProject.compensation;
type Change = Partial<{
  strings: readonly InstrumentString[];
  setup: typeof steelProject.setup;
  fit: typeof fit;
  doubts: Readonly<Record<string, number>>;
}>;
const model = (change: Change = {}) =>
  stringModels(
    change.strings ?? steelProject.strings,
    places,
    645,
    change.setup ?? steelProject.setup,
    change.fit ?? fit,
    change.doubts ?? {},
  );

// Independent evaluation of the worked example, printed to 0.001 mm, 0.1 N, 0.1 of κ and 0.01 cents; see there.
describe('stringModels, the worked example', () => {
  const models = answerOf(model());

  it('finds its setbacks, tensions and stiffness string by string', () => {
    expect(models.map(({ id, name }) => id + name)).toEqual(['s1E', 's2B', 's3G', 's4D', 's5A', 's6E']);
    for (const [index, { saddle, nut, rms, tension, kappa, b0 }] of models.entries()) {
      expect(Math.abs(saddle - (WORKED.fit[index] ?? 0))).toBeLessThan(0.00051);
      expect(nut).toBe(0);
      expect(Math.abs(rms - (WORKED.fitRms[index] ?? 0))).toBeLessThan(0.0051);
      // The masses are printed to four digits, which adds up to 0.01 N.
      expect(Math.abs(tension - (WORKED.tension[index] ?? 0))).toBeLessThan(0.06);
      expect(Math.abs(kappa - (WORKED.kappa[index] ?? 0))).toBeLessThan(0.1);
      // B0 · L0 is √(E·I/T0); the open string is longer than 645 by less than 0.03.
      expect(b0 * 645).toBeCloseTo(WORKED.bendingLength[index] ?? 0, 3);
    }
  });

  it('runs heights evenly from string to string', () => {
    for (const [index, { setup }] of models.entries()) {
      const { nutHeight = 0, action = 0 } = WORKED_SETUPS[index] ?? {};
      expect(setup.nutHeight).toBeCloseTo(nutHeight, 12);
      expect(setup.action).toBeCloseTo(action, 12);
      expect([setup.relief, setup.reliefFrets]).toEqual([0.15, [1, 14]]);
    }
  });

  it('moves the nut as well when it may', () => {
    for (const [index, { saddle, nut }] of answerOf(model({ fit: { ...fit, nut: 'moves' } })).entries()) {
      expect(Math.abs(saddle - (WORKED.freeSaddle[index] ?? 0))).toBeLessThan(0.0011);
      expect(Math.abs(nut - (WORKED.freeNut[index] ?? 0))).toBeLessThan(0.0011);
    }
  });
});

describe('stringModels refuses', () => {
  const paths = (change: Change) => {
    const found = model(change);
    return found.ok ? [] : found.issues.map(({ path, code, message }) => [path, code, message]);
  };
  const withSixth = (change: Partial<InstrumentString>) =>
    steelProject.strings.map((string, index) => (index === 5 ? { ...string, ...change } : string));

  it('a string by its own field and name, and no other', () => {
    expect(paths({ strings: withSixth({ frequency: 0 }) })).toEqual([
      ['strings.5.frequency', 'intonation.not-above-0', 'String 6 (E): expected a number above 0, got 0.'],
    ]);
    expect(paths({ strings: withSixth({ massPerLength: 0 }) }).map(([path]) => path)).toEqual([
      'strings.5.massPerLength',
    ]);
    const elastic = { kind: 'core', coreDiameter: 0, coreShape: 'round', modulus: 200 } as const;
    expect(paths({ strings: withSixth({ elastic }) }).map(([path]) => path)).toEqual([
      'strings.5.elastic.coreDiameter',
    ]);
  });

  it('a straightedge that rests on one fret, and a range of frets that the nut cannot move by', () => {
    const setup = { ...steelProject.setup, reliefFrets: { from: 9, to: 8 } };
    expect(new Set(paths({ setup }).map(([path, code]) => `${path} ${code}`))).toEqual(
      new Set(['setup.reliefFrets intonation.relief-frets']),
    );
    expect(new Set(paths({ fit: { ...fit, firstFret: 5, lastFret: 5, nut: 'moves' } }).map(([path]) => path))).toEqual(
      new Set(['compensation.fit.lastFret']),
    );
    expect(paths({ fit: { ...fit, firstFret: 7, lastFret: 3 } })).toEqual([
      ['compensation.fit.lastFret', 'fit.range', 'The last fret of the range is not below its first.'],
    ]);
  });
});

describe('fitOptions', () => {
  it.each([
    [
      { firstFret: 3, lastFret: 7 },
      { frets: [3, 4, 5, 6, 7], freeNut: false },
    ],
    [
      { firstFret: 3, lastFret: 5, nut: 'moves' as const },
      { frets: [3, 4, 5], freeNut: true },
    ],
    [
      { firstFret: 7, lastFret: 3 },
      { frets: [], freeNut: false },
    ],
    [
      { match: 'octave' as const, nut: 'moves' as const },
      { frets: [12], freeNut: false },
    ],
  ])('%o counts %o', (change, options) => {
    expect(fitOptions({ ...fit, ...change })).toEqual(options);
  });
});

describe('helpsMost', () => {
  const most = (doubts: Readonly<Record<string, number>>) => helpsMost(answerOf(model({ doubts })));

  // 0.001 in of core moves the six strings' fit by 0.32 0.45 0.32 0.38 0.44 0.56 mm (independent evaluation, see there).
  it('names the core of the 6th string when cores are in doubt by a thousandth of an inch', () => {
    const found = most({ coreDiameter: 0.0254 });
    expect(found).toMatchObject({ input: 'coreDiameter', name: 'core', string: 5, ofString: true });
    expect(Math.abs((found?.shift ?? 0) - 0.56)).toBeLessThan(0.03);
  });

  // 0.25 mm of action moves them by 0.23 0.43 0.23 0.32 0.39 0.55.
  it('names the action, which is one for all, when that is in doubt', () => {
    const found = most({ action: 0.25, coreDiameter: 0.001 });
    expect(found).toMatchObject({ input: 'action', name: 'action', string: 5, ofString: false });
    expect(Math.abs((found?.shift ?? 0) - 0.55)).toBeLessThan(0.03);
  });

  it('never names what is the player’s', () => {
    expect(most({ pushDown: 1, fingerDistance: 10 })?.input).not.toMatch(/pushDown|fingerDistance/);
  });

  it('has nothing to say when nothing is in doubt', () => {
    const none = Object.fromEntries(DOUBTFUL_INPUTS.map((input) => [input, 0]));
    expect(most(none)).toBeNull();
    expect(answerOf(model({ doubts: none })).map(({ sigma }) => sigma)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(helpsMost([])).toBeNull();
  });
});

describe('usual doubts', () => {
  it('stand for every figure that may be in doubt, each with a source', () => {
    expect(USUAL_DOUBTS.map(({ input }) => input)).toEqual([...DOUBTFUL_INPUTS]);
    for (const { sigma, source, name } of USUAL_DOUBTS) {
      expect(sigma).toBeGreaterThan(0);
      expect(source.length).toBeGreaterThan(10);
      expect(name).not.toBe('');
    }
  });

  // One per cent of 2 g/m; five per cent of κ 50; half a thousandth of an inch is 0.0127 mm.
  it('are shares of the figure where they are relative, and give way to the maker’s own', () => {
    const figures: Readonly<Record<string, number>> = { massPerLength: 2, kappa: 50 };
    const usual = doubtsFor({}, (input) => figures[input]);
    expect(usual.massPerLength).toBeCloseTo(0.02, 12);
    expect(usual.kappa).toBeCloseTo(2.5, 12);
    expect(usual.b0).toBe(0);
    expect(usual.coreDiameter).toBeCloseTo(0.0127, 12);
    const own = doubtsFor({ massPerLength: 0.5, action: 0 }, (input) => figures[input]);
    expect([own.massPerLength, own.action, own.kappa]).toEqual([0.5, 0, usual.kappa]);
  });
});
