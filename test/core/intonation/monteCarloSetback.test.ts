import { describe, expect, it } from 'vitest';
import { fitSetback } from '../../../src/core/intonation/fitSetback';
import { monteCarloSetback, type SetbackSampling } from '../../../src/core/intonation/monteCarloSetback';
import { setbackSensitivity } from '../../../src/core/intonation/setbackSensitivity';
import type { Setup } from '../../../src/core/intonation/types';
import { seededRandom } from '../../../src/core/numeric/seededRandom';
import { WORKED_SETUPS, WORKED_STRINGS } from '../../reference/intonation-worked';

const FIT = { frets: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], freeNut: false };
const sampling = (i: number, more: Partial<SetbackSampling> = {}): SetbackSampling => ({
  string: WORKED_STRINGS[i] as (typeof WORKED_STRINGS)[number],
  setup: WORKED_SETUPS[i] as Setup,
  options: FIT,
  doubts: { action: 0.15, nutHeight: 0.05, relief: 0.05, coreDiameter: 0.01, modulus: 6 },
  samples: 20000,
  seed: 11,
  ...more,
});

function run(request: SetbackSampling, chunk?: number) {
  const steps: number[] = [];
  const generator = monteCarloSetback(request, chunk);
  for (let next = generator.next(); ; next = generator.next()) {
    if (next.done) return { steps, result: next.value };
    steps.push(next.value);
  }
}
function spread(request: SetbackSampling) {
  const { result } = run(request);
  if (!result.ok) throw new Error(result.issues[0]?.message);
  return result.value;
}

describe('monteCarloSetback', () => {
  it.each([0, 1, 2, 3, 4, 5])('string %s agrees with the first order for doubts of ordinary size', (i) => {
    const request = sampling(i);
    const first = setbackSensitivity(request.string, request.setup, FIT, request.doubts);
    if (!first.ok) throw new Error(first.issues[0]?.message);
    const { mean, sigma, low, high } = spread(request);
    // 20,000 samples: sigma good to 0.5 %, the mean to sigma/141; curvature adds a little to both.
    expect(Math.abs(sigma / first.value.sigma - 1)).toBeLessThan(0.03);
    expect(Math.abs(mean - first.value.fit.saddle)).toBeLessThan(0.05 * sigma);
    // 95 % of a normal spread lies within 1.96 sigma.
    expect((high - low) / (2 * 1.96 * sigma)).toBeCloseTo(1, 1);
  });

  it('makes with one Newton step what full fits make, over 1,000 samples', () => {
    const request = sampling(5, { samples: 1000, seed: 5 });
    const { normal } = seededRandom(5);
    const full: number[] = [];
    const { string, setup } = request;
    for (let n = 0; n < 1000; n += 1) {
      // Drawn in the order of the list of inputs.
      const action = setup.action + 0.15 * normal();
      const nutHeight = Math.abs(setup.nutHeight + 0.05 * normal());
      const relief = setup.relief + 0.05 * normal();
      const coreDiameter = 0.0175 * 25.4 + 0.01 * normal();
      const modulus = 200 + 6 * normal();
      const elastic = { ...string.elastic, coreDiameter, modulus } as typeof string.elastic;
      const fit = fitSetback({ ...string, elastic }, { ...setup, action, nutHeight, relief }, FIT);
      full.push(fit.ok ? fit.value.saddle : Number.NaN);
    }
    full.sort((a, b) => a - b);
    const { sorted } = spread(request);
    full.forEach((value, n) => {
      expect(Math.abs((sorted[n] as number) - value)).toBeLessThan(0.01);
    });
  });

  it('shows its progress, and can be left', () => {
    expect(run(sampling(0, { samples: 2500 }), 1000).steps).toEqual([1000, 2000]);
    const left = monteCarloSetback(sampling(0), 100);
    expect(left.next().value).toBe(100);
    expect(left.return(undefined as never).done).toBe(true);
  });

  it('repeats itself for the same seed whatever the chunk, and not for another', () => {
    const [a, b, c] = [
      run(sampling(1, { samples: 500 }), 7),
      run(sampling(1, { samples: 500 })),
      run(sampling(1, { samples: 500, seed: 12 })),
    ].map(({ result }) => (result.ok ? result.value.mean : Number.NaN));
    expect(a).toBe(b);
    expect(a).not.toBe(c);
  });

  it.each([
    [{ samples: 0 }, 'samples'],
    [{ samples: 2e6 }, 'samples'],
    [{ seed: 0.5 }, 'seed'],
    [{ doubts: { relief: -1 } }, 'doubts.relief'],
    [{ options: { frets: [], freeNut: false } }, 'frets'],
  ] as const)('refuses %o', (more, path) => {
    const { steps, result } = run(sampling(0, more));
    expect(steps).toEqual([]);
    expect(!result.ok && result.issues[0]?.path).toBe(path);
  });
});
