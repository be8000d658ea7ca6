import { expect } from 'vitest';
import type { Path, Point } from '../../../../src/core/geom/types';
import type { Result } from '../../../../src/core/result';
import { polygon } from '../paths';

export const at = (x: number, y: number): Point => ({ x, y });

/** 40 across, 20 along, corners on both sides; clockwise on the page, its last side implied. */
export const box: Path = polygon([
  [-20, 0],
  [20, 0],
  [20, 20],
  [-20, 20],
]);

/**
 * Symmetric, 70 across, 28 along: a straight front, quarter-round corners of 5, and a back of two curves that meet on the
 * centreline. Nodes 0 and 1, 8 and 2, 7 and 3, 6 and 4 are partners, node 5 lies on the centreline. All joins are smooth.
 */
export const swelled: Path = {
  start: at(-30, 0),
  segments: [
    { kind: 'line', to: at(30, 0) },
    { kind: 'arc', to: at(35, 5), centre: at(30, 5), clockwise: true },
    { kind: 'line', to: at(35, 15) },
    { kind: 'arc', to: at(30, 20), centre: at(30, 15), clockwise: true },
    { kind: 'cubic', c1: at(20, 20), c2: at(12, 28), to: at(0, 28) },
    { kind: 'cubic', c1: at(-12, 28), c2: at(-20, 20), to: at(-30, 20) },
    { kind: 'arc', to: at(-35, 15), centre: at(-30, 15), clockwise: true },
    { kind: 'line', to: at(-35, 5) },
    { kind: 'arc', to: at(-30, 0), centre: at(-30, 5), clockwise: true },
  ],
  closed: true,
};

/** An arc of radius 5 over a chord of 6, so 1 high (5 − √(25 − 9)), and three sides to close it. */
export const arched: Path = {
  start: at(0, 0),
  segments: [
    { kind: 'arc', to: at(6, 0), centre: at(3, 4), clockwise: true },
    { kind: 'line', to: at(6, 20) },
    { kind: 'line', to: at(0, 20) },
  ],
  closed: true,
};

/** A line that runs on smoothly into a curve at node 1, two curves that meet smoothly at node 2, and two sides more. */
export const flowing: Path = {
  start: at(0, 0),
  segments: [
    { kind: 'line', to: at(10, 0) },
    { kind: 'cubic', c1: at(14, 0), c2: at(20, 6), to: at(20, 10) },
    { kind: 'cubic', c1: at(20, 13), c2: at(17, 20), to: at(10, 20) },
    { kind: 'line', to: at(0, 20) },
  ],
  closed: true,
};

/** The answer of a result that must be one. */
export function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.issues.map(({ code, message }) => `${code}: ${message}`).join('\n'));
  return result.value;
}

/** The code of the first reason why there is no answer. */
export const codeOf = (result: Result<unknown>): string | undefined => (result.ok ? undefined : result.issues[0]?.code);

/** The reasons in words. */
export const wordsOf = (result: Result<unknown>): string =>
  result.ok ? '' : result.issues.map(({ message }) => message).join('\n');

/** All figures of a path in order, start first. */
const figures = (path: Path): readonly number[] =>
  [
    path.start,
    ...path.segments.flatMap((segment) =>
      segment.kind === 'cubic'
        ? [segment.c1, segment.c2, segment.to]
        : segment.kind === 'arc'
          ? [segment.centre, segment.to]
          : [segment.to],
    ),
  ].flatMap(({ x, y }) => [x, y]);

/** Expects the same kinds of segments with the same figures, within 1e-9 mm. */
export function expectSame(path: Path, other: Path, within = 1e-9): void {
  expect(path.segments.map(({ kind }) => kind)).toEqual(other.segments.map(({ kind }) => kind));
  const [one, two] = [figures(path), figures(other)];
  for (const [index, figure] of one.entries())
    expect(Math.abs(figure - (two[index] ?? Number.NaN))).toBeLessThan(within);
}

const key = (start: Point, segment: Path['segments'][number], mirrored: boolean): string => {
  const word = ({ x, y }: Point): string => `${mirrored ? 0 - x : x} ${y}`;
  const inner =
    segment.kind === 'cubic' ? [segment.c1, segment.c2] : segment.kind === 'arc' ? [segment.centre] : ([] as Point[]);
  const points = [start, ...inner, segment.to].map(word);
  // Mirrored and run backwards an arc turns the way it did.
  return [segment.kind, segment.kind === 'arc' && segment.clockwise, ...(mirrored ? points.reverse() : points)].join(
    ', ',
  );
};

/** Expects every segment to have its mirror image among the others, figure by figure to the last bit. */
export function expectMirrored(path: Path): void {
  let start = path.start;
  const sides = path.segments.map((segment) => {
    const from = start;
    start = segment.to;
    return { from, segment };
  });
  expect(start).toEqual(path.start);
  const keys = sides.map(({ from, segment }) => key(from, segment, false));
  const mirrored = sides.map(({ from, segment }) => key(from, segment, true));
  expect([...mirrored].sort()).toEqual([...keys].sort());
}
