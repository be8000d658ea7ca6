import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../src/core/geom/circlePath';
import { cubicPoint } from '../../../src/core/geom/cubicPoint';
import { pathToCubics } from '../../../src/core/geom/pathToCubics';
import { signedArea } from '../../../src/core/geom/signedArea';
import type { Path } from '../../../src/core/geom/types';
import { CUBIC_ARC_ERROR, CUBIC_CIRCLE } from '../../reference/geometry';
import { arcSegmentPath, cubicCircle, cubicLoop } from './paths';

/** The greatest radius error found along the cubics of a path about a centre, as a share of the radius. */
function worstError(path: Path, centre: { x: number; y: number }, radius: number): number {
  let worst = 0;
  let start = path.start;
  for (const segment of path.segments) {
    if (segment.kind === 'cubic')
      for (let i = 0; i <= 1000; i++) {
        const at = cubicPoint(start, segment, i / 1000);
        worst = Math.max(worst, Math.abs(Math.hypot(at.x - centre.x, at.y - centre.y) / radius - 1));
      }
    start = segment.to;
  }
  return worst;
}

/** An arc over a turn given in degrees, on a circle of radius 100. */
function arcOver(degrees: number): { path: Path; centre: { x: number; y: number } } {
  const path = arcSegmentPath(200 * Math.sin((degrees * Math.PI) / 360), 100);
  const [arc] = path.segments;
  if (arc?.kind !== 'arc') throw new Error('expected an arc');
  return { path: { ...path, closed: false }, centre: arc.centre };
}

describe('cubicPoint', () => {
  it('finds where a circle by four cubics strays most', () => {
    const path = cubicCircle(CUBIC_CIRCLE.handle);
    const [first] = path.segments;
    if (first?.kind !== 'cubic') throw new Error('expected a cubic');
    const at = cubicPoint(path.start, first, CUBIC_CIRCLE.worstAt);
    expect(Math.hypot(at.x, at.y)).toBeCloseTo(CUBIC_CIRCLE.worstRadius, 9);
  });
});

describe('pathToCubics', () => {
  it.each([
    [30, 1],
    [29, 1],
    [31, 2],
    [45, 2],
    [60, 2],
    [90, 3],
    [180, 6],
  ])('cuts a turn of %d degrees in %d', (degrees, count) => {
    const { path, centre } = arcOver(degrees);
    const cubics = pathToCubics(path);
    expect(cubics.segments.map(({ kind }) => kind)).toEqual(Array(count).fill('cubic'));
    expect(cubics.segments.at(-1)?.to).toEqual(path.segments.at(-1)?.to);
    // 30° is the widest: the published error for it holds for all.
    const [, , , [, allowed]] = CUBIC_ARC_ERROR;
    expect(worstError(cubics, centre, 100)).toBeLessThan(allowed * 1.001);
  });

  it('strays as published at 30 degrees', () => {
    const { path, centre } = arcOver(30);
    const [, , , [, error]] = CUBIC_ARC_ERROR;
    expect(Math.abs(worstError(pathToCubics(path), centre, 100) / error - 1)).toBeLessThan(0.001);
  });

  it.each([true, false])('keeps a circle, clockwise %s', (clockwise) => {
    const circle = circlePath({ x: 20, y: 7 }, 8);
    const segments = circle.segments.map((one) => (one.kind === 'arc' ? { ...one, clockwise } : one));
    const cubics = pathToCubics({ ...circle, segments });
    expect(cubics.segments).toHaveLength(12);
    expect(worstError(cubics, { x: 20, y: 7 }, 8)).toBeLessThan(3.73e-7);
    expect(Math.sign(signedArea(cubics))).toBe(clockwise ? 1 : -1);
    expect(Math.abs(signedArea(cubics) / (64 * Math.PI))).toBeCloseTo(1, 6);
  });

  it('leaves lines and cubics alone', () => {
    expect(pathToCubics(cubicLoop)).toEqual(cubicLoop);
  });
});
