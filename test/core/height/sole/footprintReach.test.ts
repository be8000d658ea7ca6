import { describe, expect, it } from 'vitest';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import type { Path } from '../../../../src/core/geom/types';
import { footprintReach } from '../../../../src/core/height/sole/footprintReach';

const line = (x: number, y: number) => ({ kind: 'line', to: { x, y } }) as const;

describe('footprintReach', () => {
  it('finds both edges, at nodes too', () => {
    expect(footprintReach(rectanglePath(-10, 2, 20, 5), 0)).toEqual({ front: 2, back: 7 });
    const diamond: Path = { start: { x: 0, y: -3 }, segments: [line(4, 0), line(0, 3), line(-4, 0)], closed: true };
    expect(footprintReach(diamond, 0)).toEqual({ front: -3, back: 3 });
    expect(footprintReach(diamond, 2)).toEqual({ front: -1.5, back: 1.5 });
  });

  it('finds them on arcs and curves (3-4-5)', () => {
    const found = footprintReach(circlePath({ x: 0, y: 10 }, 5), 3);
    expect(found?.front).toBeCloseTo(6, 5);
    expect(found?.back).toBeCloseTo(14, 5);
    // A cubic with all its handles at one height is flat there: y = 3·t(1 − t)·4, at t = 1/2 it is 3.
    const arched: Path = {
      start: { x: -3, y: 0 },
      segments: [{ kind: 'cubic', c1: { x: -1, y: 4 }, c2: { x: 1, y: 4 }, to: { x: 3, y: 0 } }],
      closed: true,
    };
    expect(footprintReach(arched, 0)).toEqual({ front: 0, back: 3 });
  });

  it('is null beside the outline', () => {
    expect(footprintReach(rectanglePath(-10, 2, 20, 5), 11)).toBeNull();
  });
});
