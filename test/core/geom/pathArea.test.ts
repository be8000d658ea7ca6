import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../src/core/geom/circlePath';
import { mirrorPath } from '../../../src/core/geom/mirrorPath';
import { pathArea } from '../../../src/core/geom/pathArea';
import { pathCentroid } from '../../../src/core/geom/pathCentroid';
import { rectanglePath } from '../../../src/core/geom/rectanglePath';
import { signedArea } from '../../../src/core/geom/signedArea';
import { transformPath } from '../../../src/core/geom/transformPath';
import type { Path } from '../../../src/core/geom/types';
import { CUBIC_CIRCLE, CUBIC_LOOP, POLYGONS } from '../../reference/geometry';
import { arcSegmentPath, cubicCircle, cubicLoop, polygon } from './paths';

const corner = { x: 0, y: 0 };

describe('area and centroid', () => {
  it.each(POLYGONS)('of a polygon: $area', ({ points, area, centroid }) => {
    const path = polygon(points);
    expect(signedArea(path)).toBeCloseTo(area, 12);
    expect(pathArea(path)).toBeCloseTo(Math.abs(area), 12);
    expect(pathCentroid(path).x).toBeCloseTo(centroid[0], 12);
    expect(pathCentroid(path).y).toBeCloseTo(centroid[1], 12);
  });

  it('is the same with the start repeated', () => {
    const [first] = POLYGONS;
    const path = polygon(first.points);
    const repeated: Path = { ...path, segments: [...path.segments, { kind: 'line', to: path.start }] };
    expect(signedArea(repeated)).toBe(signedArea(path));
  });

  it('of a true circle and of its cubic stand-in', () => {
    expect(signedArea(circlePath({ x: 3, y: -2 }, 5))).toBeCloseTo(25 * Math.PI, 10);
    expect(pathCentroid(circlePath({ x: 3, y: -2 }, 5))).toEqual({
      x: expect.closeTo(3, 12),
      y: expect.closeTo(-2, 12),
    });
    expect(signedArea(cubicCircle(CUBIC_CIRCLE.handle))).toBeCloseTo(CUBIC_CIRCLE.area, 12);
  });

  it('of a loop with cubics', () => {
    expect(signedArea(cubicLoop)).toBeCloseTo(CUBIC_LOOP.area, 9);
    expect(pathCentroid(cubicLoop).x).toBeCloseTo(CUBIC_LOOP.centroid[0] ?? Number.NaN, 11);
    expect(pathCentroid(cubicLoop).y).toBeCloseTo(CUBIC_LOOP.centroid[1] ?? Number.NaN, 11);
  });

  it('of a half disc and of a disc less a quarter', () => {
    // Handbooks: half disc πr²/2 with its centroid at 4r/3π. Three quarters of a disc about 0: the quarter taken away
    // has area π/4 and centroid (4/3π, 4/3π), so the rest has (−4/9π, −4/9π).
    const half: Path = {
      start: { x: 1, y: 0 },
      segments: [{ kind: 'arc', to: { x: -1, y: 0 }, centre: corner, clockwise: true }],
      closed: true,
    };
    expect(signedArea(half)).toBeCloseTo(Math.PI / 2, 12);
    expect(pathCentroid(half)).toEqual({ x: expect.closeTo(0, 12), y: expect.closeTo(4 / (3 * Math.PI), 12) });
    const rest: Path = {
      start: { x: 0, y: 1 },
      segments: [
        { kind: 'arc', to: { x: 1, y: 0 }, centre: corner, clockwise: true },
        { kind: 'line', to: corner },
      ],
      closed: true,
    };
    expect(signedArea(rest)).toBeCloseTo((3 * Math.PI) / 4, 12);
    const share = -4 / (9 * Math.PI);
    expect(pathCentroid(rest)).toEqual({ x: expect.closeTo(share, 12), y: expect.closeTo(share, 12) });
  });

  it('of a block with one side so flat an arc that its centre is a kilometre away', () => {
    // Such an arc is a parabola within 1e-8: over a chord c with sagitta s it holds 2/3·c·s, with the centroid 2/5·s out.
    const sagitta = 100 ** 2 / 8e6;
    const sliver = (2 / 3) * 100 * sagitta;
    const flat = arcSegmentPath(100, 1e6);
    expect(signedArea(flat)).toBeCloseTo(sliver, 7);
    const block: Path = {
      ...flat,
      segments: [...flat.segments, { kind: 'line', to: { x: 100, y: 30 } }, { kind: 'line', to: { x: 0, y: 30 } }],
    };
    expect(signedArea(block)).toBeCloseTo(3000 + sliver, 7);
    expect(pathCentroid(block).y).toBeCloseTo((3000 * 15 - sliver * 0.4 * sagitta) / (3000 + sliver), 5);
  });

  it('keeps its digits far from the origin', () => {
    const path = transformPath(circlePath(corner, 50), 0.3, { x: 1e5, y: -1e5 });
    expect(pathArea(path)).toBeCloseTo(2500 * Math.PI, 6);
    expect(pathCentroid(path).x).toBeCloseTo(1e5, 8);
  });

  it('turns its sign in the mirror and keeps it in rigid moves', () => {
    const paths = fc.constantFrom(
      cubicLoop,
      circlePath({ x: 3, y: 1 }, 4),
      ...POLYGONS.map(({ points }) => polygon(points)),
    );
    const shift = fc.double({ min: -700, max: 700, noNaN: true });
    fc.assert(
      fc.property(paths, fc.double({ min: -7, max: 7, noNaN: true }), shift, shift, (path, angle, x, y) => {
        const moved = transformPath(path, angle, { x, y });
        expect(signedArea(moved)).toBeCloseTo(signedArea(path), 7);
        expect(signedArea(mirrorPath(moved))).toBeCloseTo(-signedArea(path), 7);
      }),
      { seed: 2504, numRuns: 200 },
    );
  });

  it('throws for what encloses nothing', () => {
    const open: Path = { ...rectanglePath(0, 0, 2, 1), closed: false };
    for (const measure of [signedArea, pathArea, pathCentroid]) expect(() => measure(open)).toThrow('closed path');
    const flat = polygon([
      [0, 0],
      [4, 0],
      [8, 0],
    ]);
    expect(pathArea(flat)).toBe(0);
    expect(() => pathCentroid(flat)).toThrow('encloses an area');
  });

  it('throws for numbers that are not finite', () => {
    const bad = polygon([
      [0, 0],
      [Number.NaN, 0],
      [1, 1],
    ]);
    for (const measure of [signedArea, pathArea, pathCentroid, mirrorPath])
      expect(() => measure(bad)).toThrow(RangeError);
  });
});
