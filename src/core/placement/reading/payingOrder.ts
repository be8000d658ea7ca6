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

/** The information of readings, AᵀWA with each freedom in its tolerance: xx, yy, tt, xy, xt, yt. */
type Information = readonly [number, number, number, number, number, number];

const informationOf = ({ slopes, sigma }: Weighed, tolerance: Tolerance): Information => {
  const [x, y, t] = [
    (slopes[0] * tolerance.x) / sigma,
    (slopes[1] * tolerance.y) / sigma,
    (slopes[2] * tolerance.angle) / sigma,
  ];
  return [x * x, y * y, t * t, x * y, x * t, y * t];
};

const plus = (a: Information, b: Information): Information => [
  a[0] + b[0],
  a[1] + b[1],
  a[2] + b[2],
  a[3] + b[3],
  a[4] + b[4],
  a[5] + b[5],
];

/** What is left in doubt: the sum of the variances, each in squares of its tolerance. The trace of the inverse, by cofactors. */
const doubtLeft = ([xx, yy, tt, xy, xt, yt]: Information): number => {
  const determinant = xx * (yy * tt - yt * yt) - xy * (xy * tt - yt * xt) + xt * (xy * yt - yy * xt);
  return (yy * tt - yt * yt + xx * tt - xt * xt + xx * yy - xy * xy) / determinant;
};

const sumOf = (weighed: readonly Weighed[], tolerance: Tolerance): Information =>
  [...BY_EYE, ...weighed].map((each) => informationOf(each, tolerance)).reduce(plus);

/**
 * The line that helps most beside those that were read: the least that is left in doubt after it (A-optimal design: Pukelsheim,
 * Optimal Design of Experiments, 1993, ch. 6), from a bridge that was set by eye. The worst freedom, in its own tolerance,
 * weighs most by far. Null when there is none to choose from.
 */
export const bestNext = (
  lines: readonly ReadLine[],
  taken: readonly Weighed[],
  pose: Pose,
  tolerance: Tolerance,
  sigmaOf: (line: ReadLine) => number,
): ReadLine | null => {
  const known = sumOf(taken, tolerance);
  let best: { readonly line: ReadLine; readonly left: number } | null = null;
  for (const line of lines) {
    const left = doubtLeft(plus(known, informationOf(weighedLine(line, pose, sigmaOf(line)), tolerance)));
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
