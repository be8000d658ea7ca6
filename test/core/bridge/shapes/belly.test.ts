import { describe, expect, it } from 'vitest';
import { belly } from '../../../../src/core/bridge/shapes/belly';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { expectSymmetric, kinksAtArcs } from './outlineChecks';
import { reverseCurveArea } from './reverseCurveArea';

const usual = { length: 152.4, wing: 25.4, full: 34.925, belly: 104, shoulder: 40, corner: 2 };

const bellyArea = ({ wing, full, belly: across, shoulder }: typeof usual): number =>
  reverseCurveArea(across / 2, full - wing, shoulder);

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
    // Join of shoulder and belly: sine of the turn 2·52·9.525 / (52² + 9.525²) = 0.354460, times (146.70342 − 40) = 37.8219;
    // 25.4 + 9.525 − 106.70342 · 2·9.525² / 2794.72563 = 27.9971.
    expect(points.map(({ id, label, at }) => [id, label, at.x, at.y])).toEqual([
      ['front-treble', 'front edge end, treble', 74.2, 0],
      ['front-bass', 'front edge end, bass', -74.2, 0],
      ['back-treble', 'back edge end, treble', 74.2, 25.4],
      ['back-bass', 'back edge end, bass', -74.2, 25.4],
      ['front-tip-treble', 'front end of the tip, treble', 76.2, 2],
      ['front-tip-bass', 'front end of the tip, bass', -76.2, 2],
      ['back-tip-treble', 'back end of the tip, treble', 76.2, expect.closeTo(23.4, 9)],
      ['back-tip-bass', 'back end of the tip, bass', -76.2, expect.closeTo(23.4, 9)],
      ['belly-treble', 'end of the belly, treble', 52, 25.4],
      ['belly-bass', 'end of the belly, bass', -52, 25.4],
      ['shoulder-treble', 'inner end of the shoulder, treble', expect.closeTo(37.8219, 3), expect.closeTo(27.9971, 3)],
      ['shoulder-bass', 'inner end of the shoulder, bass', expect.closeTo(-37.8219, 3), expect.closeTo(27.9971, 3)],
    ]);
  });

  it.each([
    ['the usual one', usual],
    ['one with sharp corners', { ...usual, corner: 0 }],
    ['one with a tight shoulder', { ...usual, shoulder: 5 }],
    ['one with a deep belly', { ...usual, full: 60, belly: 90, shoulder: 25 }],
    ['one whose belly takes the whole back edge', { ...usual, belly: 148.4 }],
    ['one with round ends', { ...usual, corner: 12.7 }],
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
