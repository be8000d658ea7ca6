import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitSaddleLine, type SaddleLineMethod } from '../../../src/core/numeric/fitSaddleLine';
import type { Result } from '../../../src/core/result';
import { SADDLE } from '../../reference/statistics';

function answerOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.issues.map((one) => one.message).join());
  return result.value;
}
const codeOf = (result: Result<unknown>): string | undefined => (result.ok ? 'none' : result.issues[0]?.code);
const degrees = (slope: number): number => (Math.atan(slope) * 180) / Math.PI;
// The lines were found from setbacks with more digits and then rounded, so each figure may be off by its own rounding and
// by that of the setbacks, 0.0005 mm each: on the slope 0.0005·Σ|x|/Σx² = 0.0005·97.2/2041 = 2.4e-5, or 0.0014°.
const ROUNDED_MM = 0.001 + 1e-9;
const ROUNDED_SLOPE = 2.4e-5 + 0.5e-5;
const ROUNDED_DEG = 0.0014 + 0.0005;
const METHODS: readonly SaddleLineMethod[] = ['least-squares', 'minimax', 'outer'];

describe('fitSaddleLine', () => {
  it('lays the least-squares line of the worked example', () => {
    const line = answerOf(fitSaddleLine(SADDLE.points, 'least-squares'));
    const { centre, slope, angleDeg, misses } = SADDLE.leastSquares;
    expect(Math.abs(line.centre - centre)).toBeLessThan(ROUNDED_MM);
    expect(Math.abs(line.slope - slope)).toBeLessThan(ROUNDED_SLOPE);
    expect(Math.abs(degrees(line.slope) + angleDeg)).toBeLessThan(ROUNDED_DEG);
    for (const [i, miss] of misses.entries())
      expect(Math.abs((line.misses[i] ?? Number.NaN) - miss)).toBeLessThan(2 * ROUNDED_MM);
  });

  it('lays the line with the least worst miss', () => {
    const line = answerOf(fitSaddleLine(SADDLE.points, 'minimax'));
    expect(Math.abs(degrees(line.slope) + SADDLE.minimax.angleDeg)).toBeLessThan(ROUNDED_DEG);
    expect(Math.abs(line.centre - SADDLE.minimax.centre)).toBeLessThan(ROUNDED_MM);
    const sizes = line.misses.map(Math.abs).sort((a, b) => b - a);
    expect(sizes[0]).toBeCloseTo(SADDLE.minimax.worst, 3);
    // Chebyshev: three misses of the worst size, with signs that alternate.
    expect(sizes[2]).toBeCloseTo(SADDLE.minimax.worst, 3);
  });

  it('keeps a slant that is given', () => {
    const { slope, centre, misses } = SADDLE.fixed;
    const line = answerOf(fitSaddleLine(SADDLE.points, 'least-squares', slope));
    expect(line.slope).toBe(slope);
    expect(line.centre).toBeCloseTo(centre, 4);
    for (const [i, miss] of misses.entries()) expect(line.misses[i]).toBeCloseTo(miss, 3);
    // By hand from the misses above: the range −1.281 to 0.773 has its middle at −0.254, the outer mean is −0.269.
    expect(answerOf(fitSaddleLine(SADDLE.points, 'minimax', slope)).centre).toBeCloseTo(centre + 0.254, 3);
    expect(answerOf(fitSaddleLine(SADDLE.points, 'outer', slope)).centre).toBeCloseTo(centre + 0.269, 3);
  });

  it('passes through the outer strings', () => {
    const line = answerOf(fitSaddleLine(SADDLE.points, 'outer'));
    expect(line.slope).toBeCloseTo(-2.954 / 54, 12); // (1.818 − 4.772)/54
    expect(line.centre).toBeCloseTo(3.295, 12); // the mean of both, as they lie at ±27
    expect(line.misses[0]).toBeCloseTo(0, 12);
    expect(line.misses[5]).toBeCloseTo(0, 12);
  });

  it('lays one string at a given slant', () => {
    const line = answerOf(fitSaddleLine([{ x: 10, setback: 2 }], 'minimax', 0.1));
    expect(line.centre).toBeCloseTo(1, 12);
    expect(line.misses[0]).toBeCloseTo(0, 12);
  });

  it('takes the middle of equally good slants', () => {
    // Two strings at x = 0 want 0 and 2, one at x = 1 wants 1: worst miss 1 for every slope from −1 to 1.
    const points = [
      { x: 0, setback: 0 },
      { x: 0, setback: 2 },
      { x: 1, setback: 1 },
    ];
    expect(answerOf(fitSaddleLine(points, 'minimax'))).toEqual({ centre: 1, slope: 0, misses: [1, -1, 0] });
    // The same where rounding makes one of the two end slopes look better than the other by 1e-17.
    const rounded = [
      { x: 0.3, setback: 0.1 },
      { x: 0.3, setback: 0.2 },
      { x: 0.3 + 1.1, setback: 0.1 + 0.05 },
    ];
    expect(answerOf(fitSaddleLine(rounded, 'minimax')).slope).toBeCloseTo(0, 12);
  });

  it('says why there is no line', () => {
    const one = [{ x: 0, setback: 2 }];
    const same = [...one, { x: 0, setback: 3 }];
    for (const method of METHODS) {
      expect(codeOf(fitSaddleLine([], method))).toBe('saddleLine.tooFew');
      expect(codeOf(fitSaddleLine([], method, 0))).toBe('saddleLine.tooFew');
      expect(codeOf(fitSaddleLine(one, method))).toBe('saddleLine.tooFew');
      expect(codeOf(fitSaddleLine(same, method))).toBe('saddleLine.onePlace');
      expect(codeOf(fitSaddleLine([...one, { x: Number.NaN, setback: 1 }], method))).toBe('saddleLine.notFinite');
      expect(codeOf(fitSaddleLine(SADDLE.points, method, Number.POSITIVE_INFINITY))).toBe('saddleLine.notFinite');
    }
  });

  it('leaves no better line nearby, whatever the strings want', () => {
    const number = (size: number) => fc.integer({ min: -1000, max: 1000 }).map((n) => (n * size) / 1000);
    const strings = fc.uniqueArray(fc.record({ x: number(40), setback: number(6) }), {
      minLength: 3,
      maxLength: 8,
      selector: ({ x }) => x,
    });
    const costs = {
      'least-squares': (misses: readonly number[]) => misses.reduce((total, miss) => total + miss * miss, 0),
      minimax: (misses: readonly number[]) => Math.max(...misses.map(Math.abs)),
    };
    fc.assert(
      fc.property(strings, fc.constantFrom('least-squares' as const, 'minimax' as const), (points, method) => {
        const { centre, slope, misses } = answerOf(fitSaddleLine(points, method));
        const least = costs[method](misses);
        for (const dc of [-0.1, -0.001, 0, 0.001, 0.1])
          for (const ds of [-0.02, -0.0002, 0, 0.0002, 0.02]) {
            const others = points.map(({ x, setback }) => centre + dc + (slope + ds) * x - setback);
            expect(costs[method](others)).toBeGreaterThanOrEqual(least - 1e-9);
          }
      }),
      { seed: 2503, numRuns: 200 },
    );
  });
});
