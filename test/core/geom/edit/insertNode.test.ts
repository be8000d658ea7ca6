import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deleteNode } from '../../../../src/core/geom/edit/deleteNodes';
import { insertNode } from '../../../../src/core/geom/edit/insertNode';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { pathArea } from '../../../../src/core/geom/pathArea';
import type { Path, Point, Segment } from '../../../../src/core/geom/types';
import { at, box, codeOf, expectMirrored, expectSame, flowing, swelled, value } from './outlines';

const quarter: Path = {
  start: at(10, 0),
  segments: [
    { kind: 'arc', to: at(0, 10), centre: at(0, 0), clockwise: true },
    { kind: 'line', to: at(0, 0) },
  ],
  closed: true,
};

const hump: Path = {
  start: at(0, 0),
  segments: [
    { kind: 'cubic', c1: at(0, 8), c2: at(8, 8), to: at(8, 0) },
    { kind: 'line', to: at(0, 0) },
  ],
  closed: true,
};

/** Length of a segment: r·turn of an arc, a cubic by Simpson's rule over its speed in 400 steps; written for this test. */
function lengthOf(from: Point, segment: Segment): number {
  const { to } = segment;
  if (segment.kind === 'line') return Math.hypot(to.x - from.x, to.y - from.y);
  if (segment.kind === 'arc') {
    const radius = Math.hypot(from.x - segment.centre.x, from.y - segment.centre.y);
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    return 2 * radius * Math.asin(Math.min(1, chord / (2 * radius)));
  }
  const speed = (t: number): number => {
    const rate = (a: number, b: number, c: number, d: number): number =>
      3 * ((1 - t) ** 2 * (b - a) + 2 * (1 - t) * t * (c - b) + t * t * (d - c));
    const { c1, c2 } = segment;
    return Math.hypot(rate(from.x, c1.x, c2.x, to.x), rate(from.y, c1.y, c2.y, to.y));
  };
  const steps = 400;
  let sum = speed(0) + speed(1);
  for (let step = 1; step < steps; step += 1) sum += speed(step / steps) * (step % 2 === 1 ? 4 : 2);
  return sum / (3 * steps);
}

function length(path: Path): number {
  let from = path.start;
  let sum = 0;
  for (const segment of path.segments) {
    sum += lengthOf(from, segment);
    from = segment.to;
  }
  return sum;
}

describe('insertNode', () => {
  it('splits a line by hand', () => {
    const { path, went, added } = value(insertNode(box, 1, 0.25));
    expect(nodesOf(path).map((node) => node.at)).toEqual([at(-20, 0), at(20, 0), at(20, 5), at(20, 20), at(-20, 20)]);
    expect(went).toEqual([0, 1, 3, 4]);
    expect(added).toEqual([2]);
  });

  it('splits the implied closing line', () => {
    expect(nodesOf(value(insertNode(box, 3, 0.5)).path)[4]?.at).toEqual(at(-20, 10));
  });

  it('splits an arc by its turn, about the same centre', () => {
    // A third of a quarter turn: 30° on a circle of 10.
    const [first, second] = value(insertNode(quarter, 0, 1 / 3)).path.segments;
    expect(first?.to.x).toBeCloseTo(8.660254037844386, 12);
    expect(first?.to.y).toBeCloseTo(5, 12);
    expect(first).toMatchObject({ kind: 'arc', centre: at(0, 0), clockwise: true });
    expect(second).toMatchObject({ kind: 'arc', centre: at(0, 0), clockwise: true, to: at(0, 10) });
  });

  it('splits a cubic as de Casteljau does by hand', () => {
    // At ¼ of (0,0) (0,8) (8,8) (8,0): (0,2) (2,8) (8,6); (½,3½) (3½,7½); (1¼,4½).
    const { path } = value(insertNode(hump, 0, 0.25));
    expect(path.segments.slice(0, 2)).toEqual([
      { kind: 'cubic', c1: at(0, 2), c2: at(0.5, 3.5), to: at(1.25, 4.5) },
      { kind: 'cubic', c1: at(3.5, 7.5), c2: at(8, 6), to: at(8, 0) },
    ]);
  });

  it('leaves area, length and places as they are, wherever it is', () => {
    const t = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(swelled, flowing, quarter, hump), fc.nat({ max: 30 }), t, (path, number, share) => {
        const index = number % nodesOf(path).length;
        const closed: Path = value(insertNode(path, 0, 0.5)).path;
        const split = value(insertNode(path, index, share)).path;
        const back = value(deleteNode(split, index + 1)).path;
        expect(Math.abs(pathArea(split) - pathArea(path))).toBeLessThan(1e-9);
        expect(Math.abs(length(split) - length(closed))).toBeLessThan(1e-9);
        expectSame(back, value(deleteNode(closed, 1)).path, 1e-8);
      }),
    );
  });

  it('puts one on the partner as well', () => {
    const { path, went, added } = value(insertNode(swelled, 4, 0.3, true));
    expect(went).toEqual([0, 1, 2, 3, 4, 6, 8, 9, 10]);
    expect(added).toEqual([5, 7]);
    expect(nodesOf(path)[7]?.at.x).toBe(-(nodesOf(path)[5]?.at.x ?? 0));
    expectMirrored(path);
  });

  it('puts two on a segment across the centreline, and one in its middle', () => {
    const two = value(insertNode(swelled, 0, 0.25, true));
    expect(
      nodesOf(two.path)
        .slice(0, 4)
        .map((node) => node.at),
    ).toEqual([at(-30, 0), at(-15, 0), at(15, 0), at(30, 0)]);
    expect(two.added).toEqual([1, 2]);
    expect(value(insertNode(swelled, 0, 0.75, true)).path).toEqual(two.path);
    const one = value(insertNode(swelled, 0, 0.5, true));
    expect(one.added).toEqual([1]);
    expect(nodesOf(one.path)[1]?.at).toEqual(at(0, 0));
    expectMirrored(one.path);
  });

  it('is refused on a node, beside the segment, and where there is no segment', () => {
    expect(codeOf(insertNode(box, 0, 0))).toBe('outline.t');
    expect(codeOf(insertNode(box, 0, 1))).toBe('outline.t');
    expect(codeOf(insertNode(box, 0, 1e-9))).toBe('outline.t');
    expect(codeOf(insertNode(box, 0, Number.NaN))).toBe('outline.t');
    expect(codeOf(insertNode(box, 4, 0.5))).toBe('outline.noNode');
  });
});
