import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handed, handedItem } from '../../../src/core/drawing/handed';
import type { Item } from '../../../src/core/drawing/types';

const number = fc.integer({ min: -400, max: 400 }).map((n) => n / 8);
const point = fc.record({ x: number, y: number });
const anyText: fc.Arbitrary<Item> = fc
  .record({
    at: point,
    text: fc.string(),
    anchor: fc.constantFrom('start' as const, 'middle' as const, 'end' as const),
    angle: fc.constantFrom(0, Math.PI / 2, -Math.PI / 2),
  })
  .map((text) => ({ ...text, kind: 'text', id: 't', part: 'p', role: 'note', layer: 'text', height: 3 }));
const anyPath: fc.Arbitrary<Item> = fc.tuple(point, point, point, point, fc.boolean()).map(([a, b, c, d, closed]) => ({
  kind: 'path',
  id: 'p',
  part: 'p',
  role: 'outline',
  layer: 'bridge',
  path: {
    start: { x: a.x - 1, y: a.y },
    segments: [
      { kind: 'arc', to: { x: a.x + 1, y: a.y }, centre: a, clockwise: closed },
      { kind: 'line', to: b },
      { kind: 'cubic', c1: b, c2: c, to: d },
    ],
    closed,
  },
}));

describe('handed', () => {
  it('leaves a right hand alone and changes the side for a left one', () => {
    expect(handed('right', { x: 3, y: -4 })).toEqual({ x: 3, y: -4 });
    expect(handed('left', { x: 3, y: -4 })).toEqual({ x: -3, y: -4 });
    expect(Object.is(handed('left', { x: 0, y: 1 }).x, 0)).toBe(true);
  });

  it('is its own inverse, for points, lines, arcs, curves and words', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('left' as const, 'right' as const),
        point,
        fc.oneof(anyText, anyPath),
        (hand, p, item) => {
          expect(handed(hand, handed(hand, p))).toEqual({ x: p.x + 0, y: p.y });
          expect(handedItem(hand, handedItem(hand, item))).toEqual(item);
        },
      ),
      { seed: 3, numRuns: 300 },
    );
  });

  // Words that start at a place and grow away from the centreline have to grow away from it on the other side too.
  it.each([
    ['start', 0, 'end'],
    ['middle', 0, 'middle'],
    ['end', 0, 'start'],
    ['start', Math.PI / 2, 'start'],
    ['end', -Math.PI / 2, 'end'],
  ] as const)('words anchored at their %s, turned by %s, are anchored at their %s', (anchor, angle, other) => {
    const text: Item = {
      kind: 'text',
      id: 't',
      part: 'p',
      role: 'note',
      layer: 'text',
      at: { x: 5, y: 6 },
      text: 'BASS',
      height: 3,
      anchor,
      angle,
    };
    expect(handedItem('left', text)).toEqual({ ...text, at: { x: -5, y: 6 }, anchor: other });
    expect(handedItem('right', text)).toBe(text);
  });
});
