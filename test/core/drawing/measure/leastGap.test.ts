import { describe, expect, it } from 'vitest';
import { leastGap } from '../../../../src/core/drawing/measure/leastGap';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import type { Path } from '../../../../src/core/geom/types';

const SQUARE = rectanglePath(0, 0, 10, 10);

/** All by hand arithmetic. */
describe('leastGap', () => {
  it('between two rectangles side by side is the way across', () => {
    expect(leastGap(SQUARE, rectanglePath(14, 3, 5, 2)).gap).toBeCloseTo(4, 9);
  });

  it('from corner to corner is the slant', () => {
    const { gap, from, to } = leastGap(SQUARE, rectanglePath(13, 14, 5, 2));
    expect(gap).toBeCloseTo(5, 9);
    expect([from.x, from.y, to.x, to.y].map((value) => value.toFixed(6))).toEqual(
      [10, 10, 13, 14].map((value) => value.toFixed(6)),
    );
  });

  it('between two holes is the way between centres less both radii', () => {
    // Centres 3, 4 apart: 5, less 1 and 1.5.
    const { gap, from, to } = leastGap(circlePath({ x: 0, y: 0 }, 1), circlePath({ x: 3, y: 4 }, 1.5));
    expect(gap).toBeCloseTo(2.5, 9);
    expect(from.x).toBeCloseTo(0.6, 4);
    expect(from.y).toBeCloseTo(0.8, 4);
    expect(to.x).toBeCloseTo(3 - 0.9, 4);
    expect(to.y).toBeCloseTo(4 - 1.2, 4);
  });

  it('from a hole to the edge around it is the wood that is left', () => {
    // Centre 3 from the left edge, radius 1.25.
    expect(leastGap(circlePath({ x: 3, y: 5 }, 1.25), SQUARE).gap).toBeCloseTo(1.75, 9);
    expect(leastGap(SQUARE, circlePath({ x: 3, y: 5 }, 1.25)).gap).toBeCloseTo(1.75, 9);
  });

  it('is nothing where the edges cross', () => {
    expect(leastGap(SQUARE, circlePath({ x: 10, y: 5 }, 2)).gap).toBeCloseTo(0, 7);
  });

  it('finds the hollow of a curve', () => {
    // The cubic from (−6, 0) to (6, 0) with both controls at y = 4 has its top at t = 1/2, y = 3/4 · 4 = 3.
    const bowl: Path = {
      start: { x: -6, y: 0 },
      segments: [{ kind: 'cubic', c1: { x: -2, y: 4 }, c2: { x: 2, y: 4 }, to: { x: 6, y: 0 } }],
      closed: true,
    };
    const { gap, from } = leastGap(bowl, rectanglePath(-20, 5, 40, 3));
    expect(gap).toBeCloseTo(2, 9);
    expect(from.x).toBeCloseTo(0, 4);
  });
});
