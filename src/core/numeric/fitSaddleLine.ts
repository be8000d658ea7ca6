import { fail, ok, type Result } from '../result';
import { leastSquaresLine } from './leastSquaresLine';
import { minimaxSlope } from './minimaxSlope';

/** Where one string crosses the saddle (x, + toward the treble) and the setback it wants, mm. */
export interface SetbackPoint {
  readonly x: number;
  readonly setback: number;
}

/** A straight saddle. */
export interface SaddleLine {
  /** Setback at x = 0, mm, + away from the nut. */
  readonly centre: number;
  /** Change of setback per mm of x: − when the bass lies farther back. */
  readonly slope: number;
  /** line − point for each string, mm: + when the saddle lies too far back for it. */
  readonly misses: readonly number[];
}

export type SaddleLineMethod = 'least-squares' | 'minimax' | 'outer';

/**
 * The straight saddle for what the strings want: with the least sum of squared misses, with the least worst miss
 * (exact), or through the first and last string. A given `slope` fixes the slant (a bridge bought slotted) and leaves
 * the centre: the mean, the middle of the range, or the mean of the two outer strings.
 *
 * Codes: saddleLine.notFinite, saddleLine.tooFew (two strings are needed, one when the slope is given),
 * saddleLine.onePlace (the strings that fix the slant all cross at one x).
 */
export function fitSaddleLine(
  points: readonly SetbackPoint[],
  method: SaddleLineMethod,
  slope?: number,
): Result<SaddleLine> {
  if (!points.every(({ x, setback }) => Number.isFinite(x) && Number.isFinite(setback)))
    return fail('', 'saddleLine.notFinite', 'Expected a finite place and setback for every string.');
  if (slope !== undefined && !Number.isFinite(slope))
    return fail('slope', 'saddleLine.notFinite', `Expected a finite slope, got ${slope}.`);
  const needed = slope === undefined ? 2 : 1;
  if (points.length < needed)
    return fail(
      '',
      'saddleLine.tooFew',
      `Expected at least ${needed} strings to lay a saddle line, got ${points.length}.`,
    );
  const slant = slope ?? bestSlope(points, method);
  if (slant === null)
    return fail(
      '',
      'saddleLine.onePlace',
      'Expected strings at different places across the saddle: their slant is open.',
    );
  const centres = points.map(({ x, setback }) => setback - slant * x);
  const centre = bestCentre(centres, method);
  return ok({ centre, slope: slant, misses: centres.map((own) => centre - own) });
}

function bestSlope(points: readonly SetbackPoint[], method: SaddleLineMethod): number | null {
  switch (method) {
    case 'least-squares': {
      const line = leastSquaresLine(points.map(({ x, setback }) => ({ x, y: setback })));
      return line.ok ? line.value.slope : null;
    }
    case 'minimax':
      return minimaxSlope(points.map(({ x, setback }) => ({ x, y: setback })));
    case 'outer': {
      const [first, last] = [points[0], points.at(-1)];
      return first && last && first.x !== last.x ? (last.setback - first.setback) / (last.x - first.x) : null;
    }
  }
}

/** The centre from the one that each string would choose at this slant. */
function bestCentre(centres: readonly number[], method: SaddleLineMethod): number {
  switch (method) {
    case 'least-squares':
      return centres.reduce((total, centre) => total + centre, 0) / centres.length;
    case 'minimax':
      return (Math.min(...centres) + Math.max(...centres)) / 2;
    case 'outer':
      return ((centres[0] ?? 0) + (centres.at(-1) ?? 0)) / 2;
  }
}
