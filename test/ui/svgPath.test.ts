import { describe, expect, it } from 'vitest';
import { svgPath } from '../../src/ui/items/svgPath';

describe('svgPath', () => {
  it('writes lines, cubics and true arcs', () => {
    const path = svgPath({
      start: { x: 0, y: 0 },
      closed: true,
      segments: [
        { kind: 'line', to: { x: 10, y: 0 } },
        { kind: 'arc', to: { x: 12, y: 2 }, centre: { x: 10, y: 2 }, clockwise: true },
        { kind: 'cubic', c1: { x: 12, y: 4 }, c2: { x: 6, y: 5 }, to: { x: 0, y: 5 } },
      ],
    });
    expect(path).toBe('M 0 0 L 10 0 A 2 2 0 0 1 12 2 C 12 4 6 5 0 5 Z');
  });

  // SVG 1.1, 8.3.8: the large flag for a turn over half a circle, the sweep flag for a growing angle, y down.
  it.each([
    [true, { x: 0, y: -2 }, 'M 2 0 A 2 2 0 1 1 0 -2'],
    [false, { x: 0, y: -2 }, 'M 2 0 A 2 2 0 0 0 0 -2'],
    [false, { x: 0, y: 2 }, 'M 2 0 A 2 2 0 1 0 0 2'],
  ])('turns the right way round (clockwise %s to %j)', (clockwise, to, text) => {
    const arc = { kind: 'arc', to, centre: { x: 0, y: 0 }, clockwise } as const;
    expect(svgPath({ start: { x: 2, y: 0 }, segments: [arc], closed: false })).toBe(text);
  });
});
