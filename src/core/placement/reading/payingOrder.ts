import { solveNormalEquations } from '../../numeric/normalEquations';
import type { Freedom, Pose } from '../poseTypes';
import { predictReading } from '../predictReading';
import type { ReadLine } from './types';

/** A reading in hand or to come: its slopes and its sigma. */
export interface Weighed {
  readonly slopes: readonly [number, number, number];
  readonly sigma: number;
}

/** How far off each freedom may be: the doubts are weighed by it. */
export type Tolerance = Readonly<Record<Freedom, number>>;

/** How far off a bridge is that was set by eye, one sigma, mm and radians: common practice, no source. */
const BY_EYE: readonly Weighed[] = [
  { slopes: [1, 0, 0], sigma: 2 },
  { slopes: [0, 1, 0], sigma: 2 },
  { slopes: [0, 0, 1], sigma: Math.PI / 180 },
];

export const weighedLine = (line: ReadLine, pose: Pose, sigma: number): Weighed => ({
  slopes: predictReading(line.reading(line.expected, sigma), pose).slopes,
  sigma,
});

/** What is left in doubt: the sum of the variances, each in squares of its tolerance. */
const doubtLeft = (weighed: readonly Weighed[], tolerance: Tolerance): number => {
  const all = [...BY_EYE, ...weighed];
  const fit = solveNormalEquations(
    all.map(({ slopes }) => slopes),
    all.map(() => 0),
    all.map(({ sigma }) => sigma),
  );
  if (!fit.ok) return Number.POSITIVE_INFINITY;
  const freedoms: readonly Freedom[] = ['x', 'y', 'angle'];
  return freedoms.reduce((sum, freedom, k) => sum + (fit.value.covariance[k]?.[k] ?? 0) / tolerance[freedom] ** 2, 0);
};

/**
 * The line that helps most beside those that were read: the least that is left in doubt after it (A-optimal design: Pukelsheim,
 * Optimal Design of Experiments, 1993, ch. 6), from a bridge that was set by eye. Null when there is none to choose from.
 */
export const bestNext = (
  lines: readonly ReadLine[],
  taken: readonly Weighed[],
  pose: Pose,
  tolerance: Tolerance,
  sigmaOf: (line: ReadLine) => number,
): ReadLine | null => {
  let best: { readonly line: ReadLine; readonly left: number } | null = null;
  for (const line of lines) {
    const left = doubtLeft([...taken, weighedLine(line, pose, sigmaOf(line))], tolerance);
    // The first of equals, as they stand in the list: a hair better is no better.
    if (best === null || left < best.left * 0.99) best = { line, left };
  }
  return best?.line ?? null;
};

/** The lines in the order that pays most, the first `count` of them: each the best beside those before it. */
export const payingOrder = (
  lines: readonly ReadLine[],
  pose: Pose,
  tolerance: Tolerance,
  sigmaOf: (line: ReadLine) => number,
  count: number,
): readonly ReadLine[] => {
  const chosen: ReadLine[] = [];
  while (chosen.length < count) {
    const left = lines.filter((line) => !chosen.includes(line));
    const weighed = chosen.map((line) => weighedLine(line, pose, sigmaOf(line)));
    const next = bestNext(left, weighed, pose, tolerance, sigmaOf);
    if (next === null) break;
    chosen.push(next);
  }
  return chosen;
};
