import { describe, expect, it } from 'vitest';
import { arcGeometry } from '../../../src/core/geom/arcGeometry';
import { arcPassesAngle } from '../../../src/core/geom/arcPassesAngle';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import type { Arc } from '../../../src/core/geom/types';
import { BULGES, SAGITTAS } from '../../reference/geometry';
import { arcSegmentPath } from './paths';

const arcOf = (chord: number, radius: number): Arc => {
  const [segment] = arcSegmentPath(chord, radius).segments;
  if (segment?.kind !== 'arc') throw new Error('expected an arc');
  return segment;
};
const origin = { x: 0, y: 0 };

describe('arcGeometry', () => {
  it.each(SAGITTAS)('radius %d over a chord of %d', (radius, chord, sagitta, excess) => {
    const arc = arcGeometry(origin, arcOf(chord, radius));
    expect(arc.radius).toBeCloseTo(radius, 9);
    expect(arc.radius * arc.sweep - chord).toBeCloseTo(excess, 6);
    expect(-pathBounds(arcSegmentPath(chord, radius)).minY).toBeCloseTo(sagitta, 6);
  });

  it.each(BULGES)('bulge %d turns %d degrees', (bulge, turn, radius, sagitta) => {
    const arc = arcGeometry(origin, arcOf(10, radius));
    expect((arc.sweep * 180) / Math.PI).toBeCloseTo(turn, 3);
    expect(Math.tan(arc.sweep / 4)).toBeCloseTo(bulge, 6);
    expect(-pathBounds(arcSegmentPath(10, radius)).minY).toBeCloseTo(sagitta, 6);
  });

  // By hand: from the right of the unit circle to its bottom on the page.
  it('turns the short way clockwise and the long way back', () => {
    const arc = { kind: 'arc', to: { x: 0, y: 1 }, centre: origin } as const;
    const right = { x: 1, y: 0 };
    expect(arcGeometry(right, { ...arc, clockwise: true })).toEqual({ radius: 1, startAngle: 0, sweep: Math.PI / 2 });
    expect(arcGeometry(right, { ...arc, clockwise: false }).sweep).toBeCloseTo((-3 * Math.PI) / 2, 12);
  });

  it('throws for numbers that are not finite', () => {
    expect(() => arcGeometry({ x: Number.NaN, y: 0 }, arcOf(10, 20))).toThrow(RangeError);
  });
});

describe('arcPassesAngle', () => {
  it.each([
    [0, Math.PI / 2, 1, true],
    [0, Math.PI / 2, 2, false],
    [0, Math.PI / 2, 1 + 4 * Math.PI, true],
    [0, -Math.PI / 2, -1, true],
    [0, -Math.PI / 2, 1, false],
    [3, 1, -3, true], // across ±π
    [3, 1, 2.9, false],
  ])('from %d by %d, at %d: %s', (startAngle, sweep, angle, passes) => {
    expect(arcPassesAngle({ radius: 1, startAngle, sweep }, angle)).toBe(passes);
  });
});
