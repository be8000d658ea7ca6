import { describe, expect, it } from 'vitest';
import { smallUkulele } from '../../../../src/core/bridge/shapes/smallUkulele';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { crossing, expectSymmetric, kinksAtArcs, simpson } from './outlineChecks';

const usual = { length: 76.2, full: 19.05, end: 16, corner: 1.5 };

/** Radius of the back edge from its chord (the length) and sagitta, by halving: sagitta = R − √(R² − h²). */
const backRadius = ({ length, full, end }: typeof usual): number =>
  crossing((radius) => full - end - (radius - Math.sqrt(radius ** 2 - length ** 2 / 4)), length / 2, 1e6);

/** Area by Simpson's rule on the width at x; the back corner's centre lies where its circle touches end and back edge. */
const quadrature = (shape: typeof usual): number => {
  const { length, full, corner } = shape;
  const half = length / 2;
  const radius = backRadius(shape);
  const middleY = full - radius;
  const inner = half - corner;
  const cornerY = crossing((y) => Math.hypot(inner, y - middleY) - (radius - corner), middleY, full);
  const touch = (inner * radius) / (radius - corner);
  const back = (x: number) => middleY + Math.sqrt(radius ** 2 - x ** 2);
  // Round the corners the variable is the angle, so that no slope is endless.
  const round = (from: number, to: number) =>
    simpson((a) => (cornerY + corner * Math.sin(a)) * corner * Math.sin(a), from, to);
  const front = simpson((a) => (corner - corner * Math.sin(a)) * corner * Math.sin(a), 0, Math.PI / 2);
  return 2 * (simpson(back, 0, touch) + round(0, Math.acos((touch - inner) / corner)) - front);
};

describe('smallUkulele', () => {
  it('is symmetric, smooth at its arcs and as wide as told on the centreline', () => {
    const { outline, points } = answerOf(smallUkulele(usual));
    const bounds = pathBounds(outline);
    expect(bounds.maxX).toBeCloseTo(38.1, 10);
    expect(bounds.minX).toBeCloseTo(-38.1, 10);
    expect(bounds.minY).toBeCloseTo(0, 10);
    expect(bounds.maxY).toBeCloseTo(19.05, 10);
    expectSymmetric(outline);
    expect(kinksAtArcs(outline)).toHaveLength(8);
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 6);
    expect(signedArea(outline)).toBeGreaterThan(0);
    expect(points[0]).toEqual({ id: 'front-treble', label: 'front edge end, treble', at: { x: 36.6, y: 0 } });
    // The back's point lies on the arc of the back edge.
    const back = points[2]?.at ?? { x: 0, y: 0 };
    const radius = backRadius(usual);
    expect(Math.hypot(back.x, back.y - (19.05 - radius))).toBeCloseTo(radius, 6);
    expect(points[2]?.label).toBe('back edge end, treble');
  });

  // Rectangle to the ends plus circular segment R²·acos((R − s)/R) − (R − s)·√(2Rs − s²), any handbook.
  it('has the area of rectangle and segment when the corners are sharp', () => {
    const shape = { ...usual, corner: 0 };
    const { outline, points } = answerOf(smallUkulele(shape));
    const radius = backRadius(shape);
    const s = 3.05;
    const segment = radius ** 2 * Math.acos((radius - s) / radius) - (radius - s) * Math.sqrt(2 * radius * s - s ** 2);
    expect(pathArea(outline)).toBeCloseTo(76.2 * 16 + segment, 5);
    expect(points[2]).toEqual({ id: 'back-treble', label: 'back corner, treble', at: { x: 38.1, y: 16 } });
  });

  it.each([usual, { ...usual, corner: 6 }, { length: 60, full: 30, end: 14, corner: 3 }])(
    'has the area that quadrature of its width gives: %o',
    (shape) => {
      expect(pathArea(answerOf(smallUkulele(shape)).outline)).toBeCloseTo(quadrature(shape), 4);
    },
  );

  it('is a rounded rectangle without a bulge', () => {
    const { outline, points } = answerOf(smallUkulele({ ...usual, end: 19.05 }));
    expect(pathArea(outline)).toBeCloseTo(76.2 * 19.05 - (4 - Math.PI) * 1.5 ** 2, 9);
    expect(points[3]).toEqual({ id: 'back-bass', label: 'back edge end, bass', at: { x: -36.6, y: 19.05 } });
  });

  it.each([
    ['ends wider than the bridge', { end: 19.1 }, ['ukulele.end']],
    ['a bulge of half the length', { length: 20, full: 20, end: 10 }, ['ukulele.deep']],
    ['a deeper bulge', { length: 20, full: 30, end: 10 }, ['ukulele.deep']],
    ['corners over half the end', { corner: 8.1 }, ['ukulele.corner']],
    ['corners of half the length', { length: 20, full: 30, end: 25, corner: 10 }, ['ukulele.corner']],
  ])('refuses %s', (_, change, codes) => {
    expect(codesOf(smallUkulele({ ...usual, ...change }))).toEqual(codes);
  });
});
