import { describe, expect, it } from 'vitest';
import { doubleSided } from '../../../../src/core/bridge/shapes/doubleSided';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { pathCentroid } from '../../../../src/core/geom/pathCentroid';
import { pathContains } from '../../../../src/core/geom/pathContains';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { expectSymmetric, kinksAtArcs } from './outlineChecks';
import { reverseCurveArea } from './reverseCurveArea';

const usual = { length: 190, full: 38, wing: 20, waist: 140, shoulder: 60, corner: 8 };

describe('doubleSided', () => {
  it('spans length and full width, alike on all four quarters and without a kink', () => {
    const { outline, faceLines } = answerOf(doubleSided(usual));
    const bounds = pathBounds(outline);
    expect(bounds.minX).toBeCloseTo(-95, 10);
    expect(bounds.maxX).toBeCloseTo(95, 10);
    expect(bounds.minY).toBeCloseTo(0, 10);
    expect(bounds.maxY).toBeCloseTo(38, 10);
    expectSymmetric(outline);
    const centre = pathCentroid(outline);
    expect([centre.x, centre.y]).toEqual([expect.closeTo(0, 9), expect.closeTo(19, 9)]);
    // The wings lie (38 − 20) / 2 = 9 in from either edge.
    for (const [y, within] of [
      [8.99, false],
      [9.01, true],
      [28.99, true],
      [29.01, false],
    ] as const)
      for (const x of [75, -75]) expect(pathContains(outline, { x, y })).toBe(within);
    expect(kinksAtArcs(outline)).toHaveLength(16);
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 7);
    expect(signedArea(outline)).toBeGreaterThan(0);
    expect(faceLines).toEqual([]);
  });

  // Run 70, depth 9: 70² + 9² = 4981, over 18 is 276.7222 for both radii, so 216.7222 for the swell; the turn has the sine
  // 2·70·9 / 4981 = 0.2529613, the join lies 54.8223 out; 1 − cos = 2·81 / 4981 = 0.0325236, times 216.7222 is 7.0486.
  it('names tips, shoulders and waist of both edges', () => {
    const { points } = answerOf(doubleSided(usual));
    const expected = [
      ['front', 'front edge end', 87, 9],
      ['back', 'back edge end', 87, 29],
      ['front-tip', 'front end of the tip', 95, 17],
      ['back-tip', 'back end of the tip', 95, 21],
      ['front-waist', 'outer end of the front shoulder', 70, 9],
      ['back-waist', 'outer end of the back shoulder', 70, 29],
      ['front-shoulder', 'inner end of the front shoulder', 54.8223, 7.0486],
      ['back-shoulder', 'inner end of the back shoulder', 54.8223, 30.9514],
    ] as const;
    expect(points).toEqual(
      expected.flatMap(([id, label, x, y]) => [
        { id: `${id}-treble`, label: `${label}, treble`, at: { x: expect.closeTo(x, 3), y: expect.closeTo(y, 3) } },
        { id: `${id}-bass`, label: `${label}, bass`, at: { x: expect.closeTo(-x, 3), y: expect.closeTo(y, 3) } },
      ]),
    );
  });

  it.each([
    ['the usual one', usual],
    ['one with sharp tips', { ...usual, corner: 0 }],
    ['one with round ends', { ...usual, corner: 10 }],
    ['one with a tight shoulder', { ...usual, shoulder: 6 }],
    ['one whose shoulders run into its tips', { ...usual, waist: 174 }],
    ['one with a deep swell', { ...usual, full: 52, waist: 40, shoulder: 5 }],
  ])('has the area of the wings less corners plus two reverse curves: %s', (_, shape) => {
    const { outline } = answerOf(doubleSided(shape));
    const wings = shape.length * shape.wing - (4 - Math.PI) * shape.corner ** 2;
    const curve = reverseCurveArea(shape.waist / 2, (shape.full - shape.wing) / 2, shape.shoulder);
    expect(pathArea(outline)).toBeCloseTo(wings + 2 * curve, 5);
    for (const kink of kinksAtArcs(outline)) expect(Math.abs(kink)).toBeLessThan(1e-5);
  });

  it.each([
    ['no swell', { full: 20 }, ['double-sided.flat']],
    ['waist and tips longer than the bridge', { waist: 174.1 }, ['double-sided.wide']],
    ['tips over half the wing', { corner: 10.1 }, ['double-sided.corner']],
    ['a swell deeper than half the waist', { full: 61, waist: 40, shoulder: 5 }, ['double-sided.deep']],
    ['a shoulder that leaves no room for the swell', { shoulder: 276.8 }, ['double-sided.shoulder']],
    [
      'several at once',
      { full: 15, waist: 180, corner: 12 },
      ['double-sided.flat', 'double-sided.wide', 'double-sided.corner'],
    ],
  ])('refuses %s', (_, change, codes) => {
    expect(codesOf(doubleSided({ ...usual, ...change }))).toEqual(codes);
  });

  it('takes a shoulder just below the limit', () => {
    expect(doubleSided({ ...usual, shoulder: 276.6 }).ok).toBe(true);
  });
});
