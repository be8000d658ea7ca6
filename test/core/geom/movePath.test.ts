import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../src/core/geom/circlePath';
import { mirrorPath } from '../../../src/core/geom/mirrorPath';
import { rectanglePath } from '../../../src/core/geom/rectanglePath';
import { transformPath } from '../../../src/core/geom/transformPath';
import type { Path } from '../../../src/core/geom/types';
import { validatePath } from '../../../src/core/geom/validatePath';
import { cubicLoop, polygon } from './paths';

const mixed: Path = {
  start: { x: 0, y: 0 },
  segments: [
    { kind: 'line', to: { x: 5, y: 0 } },
    { kind: 'arc', to: { x: 5, y: 4 }, centre: { x: 5, y: 2 }, clockwise: true },
    { kind: 'cubic', c1: { x: 4, y: 5 }, c2: { x: 1, y: 5 }, to: { x: 0, y: 0 } },
  ],
  closed: true,
};

// Expected paths by hand.
describe('mirrorPath', () => {
  it('turns x about and arcs the other way, without a −0', () => {
    expect(mirrorPath(mixed)).toEqual({
      start: { x: 0, y: 0 },
      segments: [
        { kind: 'line', to: { x: -5, y: 0 } },
        { kind: 'arc', to: { x: -5, y: 4 }, centre: { x: -5, y: 2 }, clockwise: false },
        { kind: 'cubic', c1: { x: -4, y: 5 }, c2: { x: -1, y: 5 }, to: { x: 0, y: 0 } },
      ],
      closed: true,
    });
  });

  it('is its own inverse', () => {
    for (const path of [mixed, cubicLoop, circlePath({ x: 1, y: 2 }, 3)]) {
      expect(mirrorPath(mirrorPath(path))).toEqual(path);
      expect(validatePath(mirrorPath(path)).ok).toBe(true);
    }
  });
});

describe('transformPath', () => {
  it('turns +x toward +y about the origin, then moves', () => {
    const moved = transformPath(mixed, Math.PI / 2, { x: 10, y: 20 });
    expect(moved.start).toEqual({ x: 10, y: 20 });
    const near = (x: number, y: number) => ({ x: expect.closeTo(x, 12), y: expect.closeTo(y, 12) });
    expect(moved.segments).toEqual([
      { kind: 'line', to: near(10, 25) },
      { kind: 'arc', to: near(6, 25), centre: near(8, 25), clockwise: true },
      { kind: 'cubic', c1: near(5, 24), c2: near(5, 21), to: near(10, 20) },
    ]);
    expect(moved.closed).toBe(true);
  });

  it('throws for a move that is not finite', () => {
    expect(() => transformPath(mixed, Number.NaN, { x: 0, y: 0 })).toThrow(RangeError);
    expect(() => transformPath(mixed, 0, { x: 0, y: Number.POSITIVE_INFINITY })).toThrow(RangeError);
  });
});

describe('rectanglePath and circlePath', () => {
  it('run clockwise and repeat their start', () => {
    const corners = [
      [3, 2],
      [13, 2],
      [13, 7],
      [3, 7],
      [3, 2],
    ];
    expect(rectanglePath(3, 2, 10, 5)).toEqual(polygon(corners));
    const circle = circlePath({ x: 1, y: 2 }, 3);
    expect(circle.start).toEqual({ x: 4, y: 2 });
    expect(circle.segments.map(({ to }) => to)).toEqual([
      { x: -2, y: 2 },
      { x: 4, y: 2 },
    ]);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('throw for a size of %d', (size) => {
    expect(() => rectanglePath(0, 0, size, 1)).toThrow(RangeError);
    expect(() => rectanglePath(0, 0, 1, size)).toThrow(RangeError);
    expect(() => circlePath({ x: 0, y: 0 }, size)).toThrow(RangeError);
  });
});
