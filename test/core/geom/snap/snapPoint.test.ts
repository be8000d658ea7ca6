import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { snapPoint } from '../../../../src/core/geom/snap/snapPoint';
import type { SnapLine } from '../../../../src/core/geom/snap/types';

const CENTRE: SnapLine = { kind: 'x', value: 0, reason: 'on the centreline' };
const LEVEL: SnapLine = { kind: 'y', value: 12, reason: 'level with node 3' };
/** Through the origin, rising 3 for 4. */
const SLOPE: SnapLine = {
  kind: 'line',
  through: { x: 0, y: 0 },
  direction: { x: 4, y: 3 },
  reason: 'carries on straight',
};

/** All expected places by hand arithmetic. */
describe('snapPoint', () => {
  it('leaves a point alone that is near nothing', () => {
    expect(snapPoint({ x: 5, y: 5 }, [CENTRE, LEVEL], 1)).toEqual({ at: { x: 5, y: 5 }, reasons: [], lines: [] });
  });

  it('takes the nearest line, says why, and keeps the other coordinate', () => {
    const snapped = snapPoint({ x: 0.4, y: 5.123 }, [LEVEL, CENTRE], 1);
    expect(snapped).toEqual({ at: { x: 0, y: 5.123 }, reasons: ['on the centreline'], lines: [CENTRE] });
  });

  it('holds exactly at its reach and lets go beyond it', () => {
    expect(snapPoint({ x: 1, y: 0 }, [CENTRE], 1).at.x).toBe(0);
    expect(snapPoint({ x: 1.0001, y: 0 }, [CENTRE], 1).at.x).toBe(1.0001);
  });

  it('goes to where two lines meet when that is near, with both reasons', () => {
    const snapped = snapPoint({ x: 0.5, y: 12.3 }, [CENTRE, LEVEL], 1);
    expect(snapped.at).toEqual({ x: 0, y: 12 });
    expect(snapped.reasons).toEqual(['level with node 3', 'on the centreline']);
  });

  it('stays on the nearer line when the meeting place is out of reach', () => {
    // Off by 0.8 and 0.9: the corner is sqrt(0.64 + 0.81) = 1.204 away.
    expect(snapPoint({ x: 0.8, y: 12.9 }, [CENTRE, LEVEL], 1).at).toEqual({ x: 0, y: 12.9 });
  });

  it('drops the perpendicular onto a slanting line', () => {
    // (8, 6) lies on it; 0.5 along the normal (−0.6, 0.8) from there is (7.7, 6.4).
    const { at } = snapPoint({ x: 7.7, y: 6.4 }, [SLOPE], 1);
    expect(at.x).toBeCloseTo(8, 12);
    expect(at.y).toBeCloseTo(6, 12);
  });

  it('meets a slanting line on a level one', () => {
    // y = 12 on a slope of 3/4 is x = 16.
    const { at, reasons } = snapPoint({ x: 16.2, y: 12.1 }, [SLOPE, LEVEL], 1);
    expect(at.x).toBeCloseTo(16, 12);
    expect(at.y).toBe(12);
    expect(reasons).toHaveLength(2);
  });

  it('takes two lines that are all but parallel for one', () => {
    const twin: SnapLine = { kind: 'x', value: 0.3, reason: 'as far out as node 4' };
    expect(snapPoint({ x: 0.1, y: 3 }, [twin, CENTRE], 1)).toMatchObject({ at: { x: 0 }, reasons: [CENTRE.reason] });
  });

  it('passes over a line without a direction', () => {
    const none: SnapLine = { kind: 'line', through: { x: 5, y: 5 }, direction: { x: 0, y: 0 }, reason: 'nothing' };
    expect(snapPoint({ x: 5, y: 5 }, [none], 1).reasons).toEqual([]);
  });

  it('never moves a point farther than its reach', () => {
    const coordinate = fc.double({ min: -100, max: 100, noNaN: true });
    const point = fc.record({ x: coordinate, y: coordinate });
    const line: fc.Arbitrary<SnapLine> = fc.oneof(
      coordinate.map((value): SnapLine => ({ kind: 'x', value, reason: 'x' })),
      coordinate.map((value): SnapLine => ({ kind: 'y', value, reason: 'y' })),
      fc
        .record({ through: point, direction: point })
        .map((ray): SnapLine => ({ kind: 'line', ...ray, reason: 'line' })),
    );
    fc.assert(
      fc.property(point, fc.array(line, { maxLength: 8 }), (at, lines) => {
        const snapped = snapPoint(at, lines, 2);
        expect(Math.hypot(snapped.at.x - at.x, snapped.at.y - at.y)).toBeLessThanOrEqual(2 + 1e-9);
        expect(snapped.reasons).toHaveLength(snapped.lines.length);
      }),
      { seed: 8, numRuns: 500 },
    );
  });
});
