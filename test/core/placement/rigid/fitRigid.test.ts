import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rotate } from '../../../../src/core/geom/points';
import type { Point } from '../../../../src/core/geom/types';
import { fitRigid } from '../../../../src/core/placement/rigid/fitRigid';
import { placePoint } from '../../../../src/core/placement/rigid/placePoint';
import { REGISTRATIONS, SIX_HOLES } from '../../../reference/registration';

const points = (pairs: readonly (readonly [number, number])[]): readonly Point[] => pairs.map(([x, y]) => ({ x, y }));

const fitted = (from: readonly Point[], to: readonly Point[], weights?: readonly number[]) => {
  const fit = fitRigid(from, to, weights);
  if (!fit.ok) throw new Error(fit.issues[0]?.message);
  return fit.value;
};

const coordinate = fc.integer({ min: -2000, max: 2000 }).map((tenths) => tenths / 10);
const point = fc.record({ x: coordinate, y: coordinate });
const several = fc.array(point, { minLength: 3, maxLength: 12 });
const run = { seed: 11, numRuns: 300 };

/** + when three points turn clockwise as seen on the page. */
const turning = ([a, b, c]: readonly Point[]): number =>
  a && b && c ? (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) : 0;

describe('fitRigid', () => {
  it.each(REGISTRATIONS)('$name', ({ from, to, degrees, shift, rms, decimals }) => {
    const fit = fitted(points(from), points(to));
    expect((fit.pose.angle * 180) / Math.PI).toBeCloseTo(degrees, decimals);
    expect(fit.pose.x).toBeCloseTo(shift[0], decimals - 1);
    expect(fit.pose.y).toBeCloseTo(shift[1], decimals - 1);
    expect(fit.rms).toBeCloseTo(rms, decimals - 1);
  });

  it.each(SIX_HOLES)('six holes over $drilled in on six over $old in', ({ old, drilled, off, rms, worst }) => {
    const row = (inches: number): readonly Point[] =>
      [0, 1, 2, 3, 4, 5].map((index) => ({ x: inches * 25.4 * (0.5 - index / 5), y: 640 }));
    const fit = fitted(row(drilled), row(old));
    expect(fit.pose.angle).toBeCloseTo(0, 12);
    expect(fit.residuals.map(({ x, y }) => Math.hypot(x, y))).toEqual(off.map((each) => expect.closeTo(each, 9)));
    expect(fit.rms).toBeCloseTo(rms, 3);
    expect(fit.worst).toBeCloseTo(worst, 3);
  });

  it('finds any turn and shift again', () => {
    fc.assert(
      fc.property(several, fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }), point, (from, angle, shift) => {
        const to = from.map((each) => {
          const turned = rotate(each, angle);
          return { x: turned.x + shift.x, y: turned.y + shift.y };
        });
        expect(fitted(from, to).worst).toBeLessThan(1e-9);
      }),
      run,
    );
  });

  it('never reflects: what turns clockwise still does, even when its mirror image is wanted', () => {
    fc.assert(
      fc.property(several, (from) => {
        fc.pre(Math.abs(turning(from)) > 1);
        const mirrored = from.map(({ x, y }) => ({ x: -x, y }));
        const { pose } = fitted(from, mirrored);
        const placed = from.map((each) => placePoint(pose, each));
        expect(turning(placed)).toBeCloseTo(turning(from), 6);
        expect(Math.sign(turning(placed))).toBe(-Math.sign(turning(mirrored)));
      }),
      run,
    );
  });

  it('is at least as good as any turn that is tried about the middles', () => {
    const middle = (all: readonly Point[]): Point => ({
      x: all.reduce((sum, { x }) => sum + x, 0) / all.length,
      y: all.reduce((sum, { y }) => sum + y, 0) / all.length,
    });
    const spread = fc.array(fc.tuple(point, point), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(spread, (pairs) => {
        const from = pairs.map(([one]) => one);
        const to = pairs.map(([, other]) => other);
        const { rms } = fitted(from, to);
        const [a, b] = [middle(from), middle(to)];
        for (let step = 0; step < 180; step += 1) {
          const squares = from.map((each, index) => {
            const turned = rotate({ x: each.x - a.x, y: each.y - a.y }, (step * Math.PI) / 90);
            return (turned.x + b.x - (to[index]?.x ?? 0)) ** 2 + (turned.y + b.y - (to[index]?.y ?? 0)) ** 2;
          });
          const tried = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
          expect(tried).toBeGreaterThanOrEqual(rms - 1e-9);
        }
      }),
      { seed: 12, numRuns: 100 },
    );
  });

  it('takes a weight of 2 as the point twice', () => {
    const from = points([
      [0, 0],
      [50, 1],
      [20, 30],
    ]);
    const to = points([
      [1, 1],
      [50, 3],
      [19, 32],
    ]);
    const weighted = fitted(from, to, [1, 2, 1]);
    const twice = fitted([...from, from[1] as Point], [...to, to[1] as Point]);
    expect(weighted.pose.angle).toBeCloseTo(twice.pose.angle, 12);
    expect(weighted.pose.x).toBeCloseTo(twice.pose.x, 12);
    expect(weighted.rms).toBeCloseTo(twice.rms, 12);
  });

  it('only shifts a single point, and points that coincide', () => {
    expect(fitted([{ x: 3, y: 4 }], [{ x: 5, y: 1 }])).toEqual({
      pose: { x: 2, y: -3, angle: 0 },
      residuals: [{ x: 0, y: 0 }],
      rms: 0,
      worst: 0,
    });
    const same = [
      { x: 1, y: 1 },
      { x: 1, y: 1 },
    ];
    expect(
      fitted(
        same,
        points([
          [0, 0],
          [2, 0],
        ]),
      ).pose,
    ).toEqual({ x: 0, y: -1, angle: 0 });
  });

  it.each([
    ['rigid.count', [], [], undefined],
    ['rigid.count', [[0, 0]], [], undefined],
    ['rigid.count', [[0, 0]], [[0, 0]], []],
    ['rigid.notFinite', [[0, Number.NaN]], [[0, 0]], undefined],
    ['rigid.weight', [[0, 0]], [[0, 0]], [0]],
    ['rigid.weight', [[0, 0]], [[0, 0]], [Number.POSITIVE_INFINITY]],
  ] as const)('refuses what it cannot work with: %s', (code, from, to, weights) => {
    expect(fitRigid(points(from), points(to), weights)).toMatchObject({ ok: false, issues: [{ code }] });
  });
});
