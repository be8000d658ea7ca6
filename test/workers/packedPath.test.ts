import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Path, Segment } from '../../src/core/geom/types';
import { packPath, unpackPath } from '../../src/workers/packedPath';

describe('packPath', () => {
  it('counts three numbers for the start, and three, six or seven for a segment', () => {
    const path: Path = {
      start: { x: 1, y: 2 },
      segments: [
        { kind: 'line', to: { x: 3, y: 4 } },
        { kind: 'arc', to: { x: 5, y: 4 }, centre: { x: 4, y: 4 }, clockwise: true },
        { kind: 'cubic', c1: { x: 6, y: 7 }, c2: { x: 8, y: 9 }, to: { x: 1, y: 2 } },
      ],
      closed: true,
    };
    expect(packPath(path)).toHaveLength(3 + 3 + 6 + 7);
    expect(unpackPath(packPath(path))).toEqual(path);
  });

  it('gives back every path to the last bit', () => {
    const coordinate = fc.double({ noNaN: true, noDefaultInfinity: true });
    const point = fc.record({ x: coordinate, y: coordinate });
    const segment: fc.Arbitrary<Segment> = fc.oneof(
      fc.record({ kind: fc.constant('line' as const), to: point }),
      fc.record({ kind: fc.constant('arc' as const), to: point, centre: point, clockwise: fc.boolean() }),
      fc.record({ kind: fc.constant('cubic' as const), c1: point, c2: point, to: point }),
    );
    const path = fc.record({ start: point, segments: fc.array(segment), closed: fc.boolean() });
    fc.assert(
      fc.property(path, (given) => {
        expect(unpackPath(packPath(given))).toEqual(given);
      }),
    );
  });
});
