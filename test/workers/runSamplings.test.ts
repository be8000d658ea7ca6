import { describe, expect, it } from 'vitest';
import { runSamplings } from '../../src/workers/runSamplings';
import { WORKED, WORKED_CHANGES, WORKED_SETUPS, WORKED_STRINGS } from '../reference/intonation-worked';

const FRETS = Array.from({ length: 12 }, (_, index) => index + 1);
const request = (index: number, samples: number) => {
  const string = WORKED_STRINGS[index];
  const setup = WORKED_SETUPS[index];
  if (string === undefined || setup === undefined) throw new RangeError(`There is no string ${index}.`);
  return { string, setup, options: { frets: FRETS, freeNut: false }, doubts: { action: 0.1 }, samples, seed: 7 };
};

describe('runSamplings', () => {
  it('samples every string around its own mark, as wide as the action alone makes it', () => {
    const result = runSamplings([request(0, 20_000), request(5, 20_000)], () => undefined);
    if (!result.ok) throw new Error(result.issues[0]?.message);
    const action = WORKED_CHANGES.find(({ change }) => change === 'action');
    for (const [place, index] of [0, 5].entries()) {
      const range = result.value[place];
      // The table's change is for 0.25 mm more action, given to 0.01 mm. The setback grows with the square of the action h
      // (the hand formula of the same source), so 0.1 mm about h makes 2h·0.1 / (0.25·(2h + 0.25)) of it.
      const h = WORKED_SETUPS[index]?.action ?? Number.NaN;
      const sigma = ((2 * h * 0.1) / (0.25 * (2 * h + 0.25))) * (action?.fit[index] ?? Number.NaN);
      expect(range?.mean).toBeCloseTo(WORKED.fit[index] ?? Number.NaN, 1);
      expect(Math.abs((range?.sigma ?? Number.NaN) / sigma - 1)).toBeLessThan(0.04);
      expect(Math.abs(((range?.high ?? Number.NaN) - (range?.low ?? 0)) / (2 * 1.96 * sigma) - 1)).toBeLessThan(0.05);
    }
  });

  it('tells a share that grows to 1 over all strings together', () => {
    const shares: number[] = [];
    runSamplings([request(0, 10_000), request(1, 10_000)], (share) => shares.push(share));
    expect(shares.at(-1)).toBe(1);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares).toContain(0.75);
  });

  it('ends with the reasons of a string that cannot be sampled', () => {
    const bad = { ...request(1, 1000), doubts: { action: -1 } };
    const result = runSamplings([request(0, 1000), bad], () => undefined);
    expect(result.ok ? [] : result.issues.map(({ code }) => code)).toEqual(['intonation.doubt']);
  });
});
