import { describe, expect, it } from 'vitest';
import { bellyNut } from '../../../../src/core/bridge/shapes/bellyNut';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { pathContains } from '../../../../src/core/geom/pathContains';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { expectSymmetric, kinksAtArcs } from './outlineChecks';
import { reverseCurveArea } from './reverseCurveArea';

const usual = { length: 152.4, wing: 25.4, full: 34.925, belly: 104, shoulder: 40, corner: 2 };

describe('bellyNut', () => {
  it('has its belly foremost on the centreline, symmetric and without a kink', () => {
    const { outline, faceLines } = answerOf(bellyNut(usual));
    const bounds = pathBounds(outline);
    expect(bounds.minX).toBeCloseTo(-76.2, 10);
    expect(bounds.maxX).toBeCloseTo(76.2, 10);
    expect(bounds.minY).toBeCloseTo(0, 10);
    expect(bounds.maxY).toBeCloseTo(34.925, 10);
    expect(pathContains(outline, { x: 0, y: 0.01 })).toBe(true);
    // 34.925 − 25.4 = 9.525 to the wings' front edge.
    expect(pathContains(outline, { x: 70, y: 9.52 })).toBe(false);
    expect(pathContains(outline, { x: 70, y: 9.53 })).toBe(true);
    expect(pathContains(outline, { x: 0, y: 34.92 })).toBe(true);
    expectSymmetric(outline);
    expect(kinksAtArcs(outline).length).toBeGreaterThanOrEqual(12);
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 7);
    expect(signedArea(outline)).toBeGreaterThan(0);
    expect(faceLines).toEqual([]);
  });

  // A reverse curve of run 52 and depth 9.525: the turn has the sine 2·52·9.525 / (52² + 9.525²) = 0.354460 and the radii add
  // up to 146.70342; the swell's is 106.70342, so that the join lies 37.8219 out; 1 − cos = 2·9.525² / 2794.72563 =
  // 0.0649269, times 106.70342 is 6.92792. Worked by hand.
  it('names the points of its wings behind the belly, front first', () => {
    const { points } = answerOf(bellyNut(usual));
    const expected = [
      ['front', 'front edge end', 74.2, 9.525],
      ['front-tip', 'front end of the tip', 76.2, 11.525],
      ['back', 'back edge end', 74.2, 34.925],
      ['back-tip', 'back end of the tip', 76.2, 32.925],
      ['belly', 'end of the belly', 52, 9.525],
      ['shoulder', 'inner end of the shoulder', 37.8219, 6.9279],
    ] as const;
    const named = points.map(({ id, label }) => [id, label]);
    expect(named).toEqual(
      expected.flatMap(([id, label]) => [
        [`${id}-treble`, `${label}, treble`],
        [`${id}-bass`, `${label}, bass`],
      ]),
    );
    for (const [index, [, , x, y]] of expected.entries()) {
      expect(points[2 * index]?.at.x).toBeCloseTo(x, 3);
      expect(points[2 * index + 1]?.at.x).toBeCloseTo(-x, 3);
      for (const point of points.slice(2 * index, 2 * index + 2)) expect(point.at.y).toBeCloseTo(y, 3);
    }
  });

  it.each([
    ['the usual one', usual],
    ['one with sharp corners', { ...usual, corner: 0 }],
    ['one whose belly takes the whole front edge', { ...usual, belly: 148.4 }],
  ])('has the area of wings less corners plus reverse curve: %s', (_, shape) => {
    const wings = shape.length * shape.wing - (4 - Math.PI) * shape.corner ** 2;
    const curve = reverseCurveArea(shape.belly / 2, shape.full - shape.wing, shape.shoulder);
    expect(pathArea(answerOf(bellyNut(shape)).outline)).toBeCloseTo(wings + curve, 5);
  });

  it.each([
    ['no belly', { full: 25.4 }, ['belly.flat']],
    ['a belly and corners longer than the bridge', { belly: 150 }, ['belly.wide']],
    ['corners over half the wing', { corner: 12.8 }, ['belly.corner']],
    ['a shoulder that leaves no room for the belly', { shoulder: 147 }, ['belly.shoulder']],
    ['a belly deeper than half of it is across', { full: 60, belly: 60, shoulder: 10 }, ['belly.deep']],
  ])('refuses %s', (_, change, codes) => {
    expect(codesOf(bellyNut({ ...usual, ...change }))).toEqual(codes);
  });
});
