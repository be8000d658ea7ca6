import { describe, expect, it } from 'vitest';
import { tieBlock } from '../../../../src/core/bridge/shapes/tieBlock';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { expectSymmetric, kinksAtArcs } from './outlineChecks';

const usual = { length: 190, full: 28, block: 80, corner: 0 };

describe('tieBlock', () => {
  it('is a rectangle behind its front edge when the corners are sharp', () => {
    const { outline, points, faceLines } = answerOf(tieBlock(usual));
    expect(pathBounds(outline)).toEqual({ minX: -95, minY: 0, maxX: 95, maxY: 28 });
    expect(pathArea(outline)).toBeCloseTo(190 * 28, 9);
    expect(signedArea(outline)).toBeGreaterThan(0);
    expect(points.map(({ id, label, at }) => [id, label, at.x, at.y])).toEqual([
      ['front-treble', 'front corner, treble', 95, 0],
      ['front-bass', 'front corner, bass', -95, 0],
      ['back-treble', 'back corner, treble', 95, 28],
      ['back-bass', 'back corner, bass', -95, 28],
    ]);
    expect(faceLines.map(({ start, segments }) => [start.x, start.y, segments[0]?.to.x, segments[0]?.to.y])).toEqual([
      [40, 0, 40, 28],
      [-40, 0, -40, 28],
    ]);
  });

  // Each rounded corner takes r²·(1 − π/4) off the rectangle.
  it('loses (4 − π)·r² to rounded corners, and names the ends of its straight edges', () => {
    const { outline, points } = answerOf(tieBlock({ ...usual, corner: 3 }));
    expect(pathArea(outline)).toBeCloseTo(190 * 28 - (4 - Math.PI) * 9, 9);
    expectSymmetric(outline);
    expect(kinksAtArcs(outline)).toHaveLength(8);
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 9);
    expect(points[0]).toEqual({ id: 'front-treble', label: 'front edge end, treble', at: { x: 92, y: 0 } });
    expect(points[3]).toEqual({ id: 'back-bass', label: 'back edge end, bass', at: { x: -92, y: 28 } });
  });

  it('may end in half circles', () => {
    const { outline } = answerOf(tieBlock({ length: 100, full: 30, block: 40, corner: 15 }));
    expect(pathArea(outline)).toBeCloseTo(70 * 30 + Math.PI * 225, 9);
    for (const kink of kinksAtArcs(outline)) expect(kink).toBeCloseTo(0, 9);
  });

  it.each([
    ['a block as long as the bridge', { block: 190 }, ['tie-block.block']],
    ['corners over half the width', { corner: 14.1 }, ['tie-block.corner']],
    ['corners over half the length', { length: 40, full: 60, block: 30, corner: 20.1 }, ['tie-block.corner']],
    ['both at once', { block: 200, corner: 20 }, ['tie-block.block', 'tie-block.corner']],
  ])('refuses %s', (_, change, codes) => {
    expect(codesOf(tieBlock({ ...usual, ...change }))).toEqual(codes);
  });
});
