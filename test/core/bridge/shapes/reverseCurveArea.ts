import { crossing, simpson } from './outlineChecks';

/**
 * Area between an edge and a reverse curve on it, by Simpson's rule on y(x): two circles that touch, one of radius
 * `shoulder` over the curve's end (run, shoulder), one of radius R under its top (0, depth); R by halving the gap between
 * them.
 */
export const reverseCurveArea = (run: number, depth: number, shoulder: number): number => {
  const gap = (round: number) => round + shoulder - Math.hypot(run, shoulder - (depth - round));
  const round = crossing(gap, 1e-6, 1e5);
  const join = run * (round / (round + shoulder));
  const hollow = (x: number) => shoulder - Math.sqrt(shoulder ** 2 - (run - x) ** 2);
  const swell = (x: number) => depth - round + Math.sqrt(round ** 2 - x ** 2);
  return 2 * (simpson(swell, 0, join) + simpson(hollow, join, run));
};
