import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitSetback } from '../../../src/core/intonation/fitSetback';
import { fretCents } from '../../../src/core/intonation/fretCents';
import { fretErrorParts } from '../../../src/core/intonation/fretErrorParts';
import type { SetbackFit, Setup, StringSpec } from '../../../src/core/intonation/types';

// Nothing here is taken from tables: the tests state what must hold for any string.
const FRETS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const SEED = { seed: 20240612, numRuns: 200 };

const anySetup: fc.Arbitrary<Setup> = fc.record({
  scaleLength: fc.double({ min: 340, max: 720, noNaN: true }),
  nutHeight: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
  action: fc.double({ min: 1.5, max: 4, noNaN: true }),
  relief: fc.double({ min: 0, max: 0.4, noNaN: true }),
  reliefFrets: fc.constant([1, 14] as const),
  fingerDistance: fc.double({ min: 0, max: 8, noNaN: true }),
  pushDown: fc.constantFrom(0, 0.2),
});
/** Steel, tuned so that its tension is that of a guitar string whatever the scale. */
const stringFor = (setup: Setup, core: number, newton: number): StringSpec => ({
  name: 'steel',
  frequency: Math.sqrt(newton / 1e-9) / (2 * setup.scaleLength),
  elastic: { kind: 'core', massPerLength: 1, coreDiameter: core, coreShape: 'round', modulus: 200 },
});
const anyCore = fc.double({ min: 0.2, max: 0.45, noNaN: true });
const anyTension = fc.double({ min: 60, max: 160, noNaN: true });

function fitted(string: StringSpec, setup: Setup, frets: readonly number[] = FRETS, freeNut = false): SetbackFit {
  const result = fitSetback(string, setup, { frets, freeNut });
  if (!result.ok) throw new Error(result.issues.map(({ path, message }) => `${path}: ${message}`).join('; '));
  return result.value;
}
const squares = (string: StringSpec, setup: Setup, saddle: number, nut: number): number =>
  fretCents(string, setup, { saddle, nut }, FRETS).reduce((sum, e) => sum + e * e, 0);

// Every figure alone is one that a box takes; together they are no string: 15 Hz by 0.01 g/m pull 0.0004 N on a core of 3 mm.
it('has no answer, and does not throw, for what is no string', () => {
  const setup = {
    scaleLength: 200,
    nutHeight: 0,
    action: 0.6,
    relief: 0,
    reliefFrets: [0, 8],
    fingerDistance: 0,
  } as const;
  for (const coreDiameter of [0.5, 1, 2, 3])
    for (const frets of [[1, 2], FRETS]) {
      const elastic = { kind: 'core', massPerLength: 0.01, coreDiameter, coreShape: 'round', modulus: 200 } as const;
      const result = fitSetback({ name: 'rod', frequency: 15, elastic }, setup, { frets, freeNut: false });
      expect(result.ok ? [] : result.issues.map(({ code }) => code)).toEqual(['fit.no-answer']);
    }
});

describe('compensation grows', () => {
  const grows = (change: (setup: Setup, core: number) => readonly [Setup, number]) =>
    fc.assert(
      fc.property(anySetup, anyCore, anyTension, (setup, core, newton) => {
        const string = stringFor(setup, core, newton);
        const [other, thicker] = change(setup, core);
        const changed: StringSpec = { ...string, elastic: { ...string.elastic, coreDiameter: thicker } as never };
        expect(fitted(changed, other).saddle).toBeGreaterThan(fitted(string, setup).saddle);
      }),
      SEED,
    );

  it('with more action', () => grows((setup, core) => [{ ...setup, action: setup.action + 0.2 }, core]));
  it('with a thicker core', () => grows((setup, core) => [setup, core * 1.05]));
  // Same string, same pitch: a shorter scale is slacker, so stretch and stiffness count for more.
  it('with a shorter scale', () => grows((setup, core) => [{ ...setup, scaleLength: setup.scaleLength * 0.95 }, core]));
});

describe('the fit', () => {
  it('is a true minimum, with the nut fixed and free', () => {
    fc.assert(
      fc.property(anySetup, anyCore, anyTension, fc.boolean(), (setup, core, newton, freeNut) => {
        const string = stringFor(setup, core, newton);
        const best = fitted(string, setup, FRETS, freeNut);
        const least = squares(string, setup, best.saddle, best.nut);
        expect(best.rms).toBeCloseTo(Math.sqrt(least / 12), 9);
        const moves = freeNut ? [-0.01, 0, 0.01] : [0];
        for (const saddle of [-0.01, 0, 0.01])
          for (const nut of moves)
            if (saddle !== 0 || nut !== 0)
              expect(squares(string, setup, best.saddle + saddle, best.nut + nut)).toBeGreaterThan(least);
        // The slope of the sum vanishes too: a shift of the minimum by 1e-5 mm would show here.
        const slope =
          squares(string, setup, best.saddle + 1e-3, best.nut) - squares(string, setup, best.saddle - 1e-3, best.nut);
        const curve = squares(string, setup, best.saddle + 1e-3, best.nut) - least;
        expect(Math.abs(slope)).toBeLessThan(0.05 * curve);
      }),
      SEED,
    );
  });

  it('of one fret leaves no error there, whichever fret it is', () => {
    fc.assert(
      fc.property(anySetup, anyCore, anyTension, fc.integer({ min: 3, max: 19 }), (setup, core, newton, fret) => {
        const string = stringFor(setup, core, newton);
        expect(Math.abs(fitted(string, setup, [fret]).rms)).toBeLessThan(1e-7);
      }),
      SEED,
    );
  });

  it('has nothing but length, and the lighter stretched string, left for a string that neither stretches nor bends', () => {
    fc.assert(
      fc.property(anySetup, (setup) => {
        const string: StringSpec = { name: 'thread', frequency: 200, elastic: { kind: 'measured', kappa: 0, b0: 0 } };
        const parts = fretErrorParts(string, setup, { saddle: 0, nut: 0 }, FRETS);
        fretCents(string, setup, { saddle: 0, nut: 0 }, FRETS).forEach((cents, n) => {
          const { length, density, tension, bending } = parts[n] as (typeof parts)[number];
          expect(tension).toBe(0);
          expect(bending).toBe(0);
          expect(cents).toBeCloseTo(length + density, 9);
        });
      }),
      SEED,
    );
  });

  it('keeps the errors in the order of the frets asked for', () => {
    const setup: Setup = {
      scaleLength: 645,
      nutHeight: 0.4,
      action: 2.5,
      relief: 0.1,
      reliefFrets: [1, 14],
      fingerDistance: 0,
    };
    const string = stringFor(setup, 0.4, 110);
    const forth = fitted(string, setup, [1, 5, 12]);
    const back = fitted(string, setup, [12, 5, 1]);
    expect(back.saddle).toBeCloseTo(forth.saddle, 9);
    expect(back.cents[0]).toBeCloseTo(forth.cents[2] as number, 9);
  });
});

describe('what cannot be fitted', () => {
  const setup: Setup = {
    scaleLength: 645,
    nutHeight: 0.4,
    action: 2.5,
    relief: 0.1,
    reliefFrets: [1, 14],
    fingerDistance: 0,
  };
  const string = stringFor(setup, 0.4, 110);

  it('names every wrong figure at once', () => {
    const bad = fitSetback(
      { ...string, frequency: 0 },
      { ...setup, action: -1, scaleLength: Number.NaN, reliefFrets: [14, 1] },
      { frets: [0, 12], freeNut: false },
    );
    expect(bad.ok).toBe(false);
    if (!bad.ok)
      expect(bad.issues.map(({ path }) => path)).toEqual([
        'string.frequency',
        'setup.scaleLength',
        'setup.action',
        'setup.reliefFrets',
        'frets.0',
      ]);
  });

  it.each([
    ['no frets', [], false, 'fit.no-frets'],
    ['one fret and a free nut', [12], true, 'fit.too-few-frets'],
    ['the same fret twice and a free nut', [12, 12], true, 'fit.too-few-frets'],
  ] as const)('%s', (_name, frets, freeNut, code) => {
    const result = fitSetback(string, setup, { frets, freeNut });
    expect(!result.ok && result.issues[0]?.code).toBe(code);
  });

  it('says so when no setback balances the string', () => {
    const result = fitSetback({ name: 'rod', frequency: 100, elastic: { kind: 'measured', kappa: 0, b0: 50 } }, setup, {
      frets: FRETS,
      freeNut: true,
    });
    expect(!result.ok && result.issues[0]?.code).toBe('fit.no-answer');
  });

  it('throws from fretCents, which returns plain numbers', () => {
    const none = { saddle: 0, nut: 0 };
    expect(() => fretCents(string, { ...setup, action: -1 }, none, [12])).toThrow(RangeError);
    expect(() => fretCents(string, setup, none, [0])).toThrow(/whole fret/);
    expect(() => fretCents(string, setup, { saddle: -400, nut: 0 }, [12])).toThrow(/saddle/);
    expect(() => fretCents(string, setup, { saddle: 0, nut: Number.NaN }, [12])).toThrow(/nut/);
    expect(fretCents(string, setup, none, [])).toEqual([]);
  });
});
