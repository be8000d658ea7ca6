import { describe, expect, it } from 'vitest';
import { turnedPoint, turnedSegments } from '../../../../src/core/bridge/shapes/halfTurn';
import type { Segment } from '../../../../src/core/geom/types';

describe('a half turn about the middle of a bridge 30 wide', () => {
  // By hand: x → −x, y → 30 − y.
  it('turns points and every kind of segment, and keeps the way an arc goes', () => {
    expect(turnedPoint({ x: 4, y: 10 }, 30)).toEqual({ x: -4, y: 20 });
    const segments: readonly Segment[] = [
      { kind: 'line', to: { x: 0, y: 30 } },
      { kind: 'arc', to: { x: 5, y: 5 }, centre: { x: 5, y: 10 }, clockwise: true },
      { kind: 'cubic', to: { x: 1, y: 2 }, c1: { x: 3, y: 4 }, c2: { x: -5, y: 6 } },
    ];
    expect(turnedSegments(segments, 30)).toEqual([
      { kind: 'line', to: { x: 0, y: 0 } },
      { kind: 'arc', to: { x: -5, y: 25 }, centre: { x: -5, y: 20 }, clockwise: true },
      { kind: 'cubic', to: { x: -1, y: 28 }, c1: { x: -3, y: 26 }, c2: { x: 5, y: 24 } },
    ]);
    expect(turnedSegments(turnedSegments(segments, 30), 30)).toEqual(segments);
  });
});
