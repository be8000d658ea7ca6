import { describe, expect, it } from 'vitest';
import type { Path } from '../../../src/core/geom/types';
import { turnedPath } from '../../../src/ui/import/turnedPath';

const PATH: Path = {
  start: { x: 1, y: 0 },
  segments: [
    { kind: 'arc', to: { x: 0, y: 1 }, centre: { x: 0, y: 0 }, clockwise: true },
    { kind: 'cubic', c1: { x: 2, y: 3 }, c2: { x: 4, y: 5 }, to: { x: 6, y: 7 } },
    { kind: 'line', to: { x: 1, y: 0 } },
  ],
  closed: true,
};

// By hand: a quarter clockwise with y down carries (x, y) to (−y, x).
describe('turnedPath', () => {
  it('turns a quarter clockwise, exactly', () => {
    expect(turnedPath(PATH, { quarters: 1, flipped: false })).toEqual({
      start: { x: 0, y: 1 },
      segments: [
        { kind: 'arc', to: { x: -1, y: 0 }, centre: { x: 0, y: 0 }, clockwise: true },
        { kind: 'cubic', c1: { x: -3, y: 2 }, c2: { x: -5, y: 4 }, to: { x: -7, y: 6 } },
        { kind: 'line', to: { x: 0, y: 1 } },
      ],
      closed: true,
    });
  });

  it('comes back after four quarters', () => {
    expect(turnedPath(PATH, { quarters: 4, flipped: false })).toEqual(PATH);
  });

  it('mirrors before it turns: two quarters and a mirror make top and foot change places', () => {
    const turned = turnedPath(PATH, { quarters: 2, flipped: true });
    expect(turned.start).toEqual({ x: 1, y: 0 });
    expect(turned.segments[1]).toEqual({
      kind: 'cubic',
      c1: { x: 2, y: -3 },
      c2: { x: 4, y: -5 },
      to: { x: 6, y: -7 },
    });
    expect(turned.segments[0]).toMatchObject({ to: { x: 0, y: -1 }, clockwise: false });
  });
});
