import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import type { Path } from '../../../../src/core/geom/types';
import { clipPath } from '../../../../src/core/sheets/tiles/clipPath';

const BOX = { minX: 0, minY: 0, maxX: 100, maxY: 50 };
const line = (x1: number, y1: number, x2: number, y2: number): Path => ({
  start: { x: x1, y: y1 },
  segments: [{ kind: 'line', to: { x: x2, y: y2 } }],
  closed: false,
});

const near = (value: number) => expect.closeTo(value, 9);
const ends = (path: Path | undefined) => [path?.start, path?.segments.at(-1)?.to];

// All by hand.
describe('clipPath', () => {
  it('cuts a line at both sides that it crosses', () => {
    // y = x / 2 + 10 meets x = 0 at 10 and y = 50 at x = 80.
    expect(clipPath(line(-20, 0, 200, 110), BOX).map(ends)).toEqual([
      [
        { x: near(0), y: near(10) },
        { x: near(80), y: near(50) },
      ],
    ]);
  });

  it('leaves out what lies outside, and keeps what lies inside as it is', () => {
    expect(clipPath(line(-20, 60, 200, 60), BOX)).toEqual([]);
    expect(clipPath(line(-20, 40, 40, 100), BOX)).toEqual([]);
    const inside = circlePath({ x: 50, y: 25 }, 25);
    expect(clipPath(inside, BOX)).toEqual([inside]);
    expect(clipPath(inside, BOX)[0]).toBe(inside);
  });

  it('keeps an arc an arc: a circle of 10 about a corner leaves a quarter', () => {
    const [quarter, ...others] = clipPath(circlePath({ x: 0, y: 0 }, 10), BOX);
    expect(others).toEqual([]);
    expect(quarter?.segments.map(({ kind }) => kind)).toEqual(['arc']);
    expect(ends(quarter)).toEqual([
      { x: near(10), y: near(0) },
      { x: near(0), y: near(10) },
    ]);
    expect(quarter?.segments[0]).toMatchObject({ centre: { x: 0, y: 0 }, clockwise: true });
  });

  it('cuts a circle that sticks out of two sides into its pieces', () => {
    // About (50, 25), radius 30: y = 0 and y = 50 cut it at x = 50 ± √(900 − 625) = 50 ± 16.583124.
    const pieces = clipPath(circlePath({ x: 50, y: 25 }, 30), BOX);
    const xs = pieces.flatMap((piece) => ends(piece).map((end) => end?.x ?? Number.NaN));
    expect(xs.filter((x) => Math.abs(Math.abs(x - 50) - 16.583124) < 1e-6)).toHaveLength(4);
    for (const { start, segments } of pieces)
      for (const { x, y } of [start, ...segments.map(({ to }) => to)]) {
        expect(Math.hypot(x - 50, y - 25)).toBeCloseTo(30, 9);
        expect(y).toBeGreaterThan(-1e-9);
        expect(y).toBeLessThan(50 + 1e-9);
      }
  });

  it('cuts a cubic where it crosses: a straight one, evenly told, at its middle', () => {
    const cubic: Path = {
      start: { x: 50, y: 25 },
      segments: [{ kind: 'cubic', c1: { x: 250 / 3, y: 25 }, c2: { x: 350 / 3, y: 25 }, to: { x: 150, y: 25 } }],
      closed: false,
    };
    const [piece] = clipPath(cubic, BOX);
    expect(piece?.segments).toEqual([
      {
        kind: 'cubic',
        c1: { x: near(50 + 50 / 3), y: near(25) },
        c2: { x: near(50 + 100 / 3), y: near(25) },
        to: { x: near(100), y: near(25) },
      },
    ]);
  });

  it('opens an outline whose implied side leaves', () => {
    const pieces = clipPath(rectanglePath(50, 10, 100, 20), BOX);
    const total = pieces
      .flatMap(({ start, segments }) => {
        let from = start;
        return segments.map(({ to }) => {
          const length = Math.hypot(to.x - from.x, to.y - from.y);
          from = to;
          return length;
        });
      })
      .reduce((sum, length) => sum + length, 0);
    // Two sides of 50 and one of 20 lie within.
    expect(total).toBeCloseTo(120, 9);
    expect(pieces.every(({ closed }) => !closed)).toBe(true);
  });
});
