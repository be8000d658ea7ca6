import { describe, expect, it } from 'vitest';
import { belly } from '../../../../src/core/bridge/shapes/belly';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { crossing, expectSymmetric, kinksAtArcs, simpson } from './outlineChecks';

const usual = { length: 152.4, wing: 25.4, full: 34.925, belly: 104, shoulder: 40, corner: 2 };

/**
 * Area of the belly behind the wings by Simpson's rule on y(x): two circles that touch, one of radius `shoulder` over
 * (run, wing + shoulder), one of radius R under the point (0, full); R by halving the gap between them.
 */
const bellyArea = ({ wing, full, belly: across, shoulder }: typeof usual): number => {
  const run = across / 2;
  const gap = (round: number) => round + shoulder - Math.hypot(run, wing + shoulder - (full - round));
  const round = crossing(gap, 1e-6, 1e5);
  const join = run * (round / (round + shoulder));
  const hollow = (x: number) => shoulder - Math.sqrt(shoulder ** 2 - (run - x) ** 2);
  const bulge = (x: number) => full - wing - round + Math.sqrt(round ** 2 - x ** 2);
  return 2 * (simpson(bulge, 0, join) + simpson(hollow, join, run));
};

describe('belly', () => {
  it('spans length and full width, symmetric and without a kink', () => {
    const { outline, points, faceLines } = answerOf(belly(usual));
    const bounds = pathBounds(outline);
    expect(bounds.minX).toBeCloseTo(-76.2, 10);
    expect(bounds.maxX).toBeCloseTo(76.2, 10);
    expect(bounds.minY).toBeCloseTo(0, 10);
    expect(bounds.maxY).toBeCloseTo(34.925, 10);
    expectSymmetric(outline);
    expect(kinksAtArcs(outline).length).toBeGreaterThanOrEqual(12);
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 7);
    expect(signedArea(outline)).toBeGreaterThan(0);
    expect(faceLines).toEqual([]);
    expect(points.map(({ id, label, at }) => [id, label, at.x, at.y])).toEqual([
      ['front-treble', 'front edge end, treble', 74.2, 0],
      ['front-bass', 'front edge end, bass', -74.2, 0],
      ['back-treble', 'back edge end, treble', 74.2, 25.4],
      ['back-bass', 'back edge end, bass', -74.2, 25.4],
    ]);
  });

  it.each([
    ['the usual one', usual],
    ['one with sharp corners', { ...usual, corner: 0 }],
    ['one with a tight shoulder', { ...usual, shoulder: 5 }],
    ['one with a deep belly', { ...usual, full: 60, belly: 90, shoulder: 25 }],
    ['one whose belly takes the whole back edge', { ...usual, belly: 148.4 }],
  ])('has the area of wings less corners plus reverse curve: %s', (_, shape) => {
    const wings = shape.length * shape.wing - (4 - Math.PI) * shape.corner ** 2;
    expect(pathArea(answerOf(belly(shape)).outline)).toBeCloseTo(wings + bellyArea(shape), 5);
  });

  it('keeps real corners when the radius is 0', () => {
    const { points, outline } = answerOf(belly({ ...usual, corner: 0 }));
    expect(points[1]).toEqual({ id: 'front-bass', label: 'front corner, bass', at: { x: -76.2, y: 0 } });
    expect(points[2]).toEqual({ id: 'back-treble', label: 'back corner, treble', at: { x: 76.2, y: 25.4 } });
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 7);
  });

  // (52² + 9.525²) / (2 · 9.525) = 146.70...: the two radii together, so the shoulder's is less.
  it.each([
    ['no belly', { full: 25.4 }, ['belly.flat']],
    ['a belly and corners longer than the bridge', { belly: 150 }, ['belly.wide']],
    ['corners over half the wing', { corner: 12.8 }, ['belly.corner']],
    ['a shoulder that leaves no room for the belly', { shoulder: 147 }, ['belly.shoulder']],
    ['a belly deeper than half of it is across', { full: 60, belly: 60, shoulder: 10 }, ['belly.deep']],
    ['several at once', { full: 20, belly: 152, corner: 15 }, ['belly.flat', 'belly.wide', 'belly.corner']],
  ])('refuses %s', (_, change, codes) => {
    expect(codesOf(belly({ ...usual, ...change }))).toEqual(codes);
  });

  it('takes a shoulder just below the limit', () => {
    expect(belly({ ...usual, shoulder: 146.6 }).ok).toBe(true);
  });
});
