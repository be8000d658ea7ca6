import { describe, expect, it } from 'vitest';
import { rectangular } from '../../../../src/core/bridge/shapes/rectangular';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { expectSymmetric, kinksAtArcs } from './outlineChecks';

const usual = { length: 152.4, full: 25.4, corner: 0 };

describe('rectangular', () => {
  it('is four straights behind its front edge, its corners named', () => {
    const { outline, points, faceLines } = answerOf(rectangular(usual));
    expect(pathBounds(outline)).toEqual({ minX: -76.2, minY: 0, maxX: 76.2, maxY: 25.4 });
    expect(outline.segments.map(({ kind }) => kind)).toEqual(['line', 'line', 'line', 'line']);
    // 6 × 1 in.
    expect(pathArea(outline)).toBeCloseTo(6 * 25.4 ** 2, 9);
    expect(signedArea(outline)).toBeGreaterThan(0);
    expect(faceLines).toEqual([]);
    expect(points.map(({ id, label, at }) => [id, label, at.x, at.y])).toEqual([
      ['front-treble', 'front corner, treble', 76.2, 0],
      ['front-bass', 'front corner, bass', -76.2, 0],
      ['back-treble', 'back corner, treble', 76.2, 25.4],
      ['back-bass', 'back corner, bass', -76.2, 25.4],
    ]);
  });

  // Each rounded corner takes r²·(1 − π/4) off the rectangle.
  it('loses (4 − π)·r² to rounded corners, both tangent points of each named', () => {
    const { outline, points } = answerOf(rectangular({ length: 150, full: 26, corner: 4 }));
    expect(pathArea(outline)).toBeCloseTo(150 * 26 - (4 - Math.PI) * 16, 9);
    expectSymmetric(outline);
    expect(kinksAtArcs(outline)).toHaveLength(8);
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 9);
    expect(points.map(({ id, label, at }) => [id, label, at.x, at.y])).toEqual([
      ['front-treble', 'front edge end, treble', 71, 0],
      ['front-bass', 'front edge end, bass', -71, 0],
      ['back-treble', 'back edge end, treble', 71, 26],
      ['back-bass', 'back edge end, bass', -71, 26],
      ['front-tip-treble', 'front end of the tip, treble', 75, 4],
      ['front-tip-bass', 'front end of the tip, bass', -75, 4],
      ['back-tip-treble', 'back end of the tip, treble', 75, 22],
      ['back-tip-bass', 'back end of the tip, bass', -75, 22],
    ]);
  });

  it('may end in half circles, or be a circle', () => {
    const stadium = answerOf(rectangular({ length: 100, full: 30, corner: 15 })).outline;
    expect(pathArea(stadium)).toBeCloseTo(70 * 30 + Math.PI * 225, 9);
    expect(stadium.segments).toHaveLength(6);
    const circle = answerOf(rectangular({ length: 40, full: 40, corner: 20 })).outline;
    expect(pathArea(circle)).toBeCloseTo(Math.PI * 400, 9);
    expect(circle.segments.map(({ kind }) => kind)).toEqual(['arc', 'arc', 'arc', 'arc']);
  });

  it.each([
    ['corners over half the width', { corner: 12.8 }],
    ['corners over half the length', { length: 40, full: 60, corner: 20.1 }],
  ])('refuses %s', (_, change) => {
    expect(codesOf(rectangular({ ...usual, ...change }))).toEqual(['rectangular.corner']);
  });
});
