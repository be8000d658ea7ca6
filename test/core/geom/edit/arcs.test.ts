import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distanceToPath } from '../../../../src/core/geom/distanceToPath';
import { arcOfRadius, arcOfSagitta } from '../../../../src/core/geom/edit/arcBetween';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { setRadius } from '../../../../src/core/geom/edit/setRadius';
import { setSegmentKind } from '../../../../src/core/geom/edit/setSegmentKind';
import { pathArea } from '../../../../src/core/geom/pathArea';
import type { Path, Point } from '../../../../src/core/geom/types';
import { BULGES, SAGITTAS } from '../../../reference/geometry';
import { jstsArea } from './jstsArea';
import { arched, at, box, codeOf, expectMirrored, expectSame, flowing, swelled, value, wordsOf } from './outlines';

const arcOf = (path: Path, index: number) => {
  const segment = path.segments[index];
  if (segment?.kind !== 'arc') throw new Error(`Segment ${index} is no arc.`);
  return segment;
};

const gap = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

describe('arcs over a chord', () => {
  it.each(SAGITTAS)('of radius %f over %f stand off as the handbook says', (radius, chord, sagitta) => {
    const arc = arcOfRadius(at(0, 0), at(chord, 0), radius, true, false);
    // Clockwise on the page from left to right the arc bulges toward −y.
    expect(radius - arc.centre.y).toBeCloseTo(sagitta, 6);
    expect(arcOfSagitta(at(0, 0), at(chord, 0), sagitta, true).centre.y / arc.centre.y).toBeCloseTo(1, 5);
  });

  it.each(BULGES)('of bulge %f turn by %f degrees', (bulge, degrees, radius, sagitta) => {
    const arc = arcOfSagitta(at(0, 0), at(10, 0), sagitta, false);
    expect(gap(arc.centre, at(0, 0))).toBeCloseTo(radius, 5);
    expect(bulge * 5).toBeCloseTo(sagitta, 6);
    // Half of the turn stands over half of the chord; anticlockwise the centre lies on the other side.
    expect(arc.centre.y).toBeCloseTo(-5 / Math.tan((degrees * Math.PI) / 360), 4);
  });
});

/** All expected centres by hand: √(r² − c²/4) off the middle of the chord. */
describe('setRadius', () => {
  it('makes a line an arc that bulges outward, whichever way the outline runs', () => {
    // r 25 over the front of 40: 15 off, behind it.
    const arc = arcOf(value(setRadius(box, 0, 25)), 0);
    expect(arc).toEqual({ kind: 'arc', to: at(20, 0), centre: at(0, 15), clockwise: true });
    const turned: Path = {
      start: at(20, 0),
      segments: [at(-20, 0), at(-20, 20), at(20, 20)].map((to) => ({ kind: 'line', to })),
      closed: true,
    };
    expect(arcOf(value(setRadius(turned, 0, 25)), 0)).toMatchObject({ centre: at(0, 15), clockwise: false });
    // The piece between chord and arc: ½·25²·(2·asin 0.8 − sin(2·asin 0.8)) = 279.559…, so 800 + that.
    expect(pathArea(value(setRadius(box, 0, 25)))).toBeCloseTo(800 + 279.559, 2);
  });

  it('bulges inward when told so', () => {
    expect(arcOf(value(setRadius(box, 0, 25, 'inward')), 0)).toMatchObject({ centre: at(0, -15), clockwise: false });
  });

  it('keeps the side of an arc, or takes the one that is told', () => {
    expect(arcOf(value(setRadius(arched, 0, 3.4)), 0).centre.y).toBeCloseTo(1.6, 12);
    const hollow = value(setRadius(arched, 0, 3.4, 'inward'));
    expect(arcOf(hollow, 0).centre.y).toBeCloseTo(-1.6, 12);
    expect(arcOf(value(setRadius(hollow, 0, 5)), 0).centre).toEqual(at(3, -4));
    expect(arcOf(value(setRadius(hollow, 0, 5, 'outward')), 0).centre).toEqual(at(3, 4));
  });

  it('takes half of the chord, and no less', () => {
    expect(arcOf(value(setRadius(box, 0, 20)), 0).centre).toEqual(at(0, 0));
    const small = setRadius(box, 0, 19.99);
    expect(codeOf(small)).toBe('outline.radiusSmall');
    expect(wordsOf(small)).toContain('40.00 mm apart');
    expect(wordsOf(small)).toContain('at least 20.00 mm');
    for (const none of [0, -5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(codeOf(setRadius(box, 0, none))).toBe('outline.radius');
  });

  it('does the partner too', () => {
    const both = value(setRadius(swelled, 2, 13, 'inward', true));
    // Chord 10 at x = 35: 12 off.
    expect(arcOf(both, 2).centre.x).toBeCloseTo(47, 12);
    expectMirrored(both);
    expectMirrored(value(setRadius(swelled, 0, 50, 'inward', true)));
  });
});

describe('setSegmentKind', () => {
  it('makes anything a line', () => {
    expect(value(setSegmentKind(flowing, 1, 'line')).path.segments[1]).toEqual({ kind: 'line', to: at(20, 10) });
    expect(value(setSegmentKind(arched, 0, 'line')).path.segments[0]).toEqual({ kind: 'line', to: at(6, 0) });
  });

  it('makes a line an arc of a sagitta or radius, and of a tenth of the chord without', () => {
    // Sagitta 10 over 40: r = (400 + 100) / 20 = 25.
    const wish = { size: { sagitta: 10 }, bulge: 'inward' } as const;
    expect(arcOf(value(setSegmentKind(box, 0, 'arc', wish)).path, 0).centre).toEqual(at(0, -15));
    expect(arcOf(value(setSegmentKind(box, 0, 'arc', { size: { radius: 25 } })).path, 0).centre).toEqual(at(0, 15));
    // Sagitta 4: r = (400 + 16) / 8 = 52.
    expect(arcOf(value(setSegmentKind(box, 0, 'arc')).path, 0).centre.y).toBeCloseTo(48, 10);
    expect(codeOf(setSegmentKind(box, 0, 'arc', { size: { sagitta: 0 } }))).toBe('outline.sagitta');
  });

  it('makes a curve the arc over its middle', () => {
    // (0,0) (0,8) (8,8) (8,0) has its middle at (4, 6): r = (16 + 36) / 12 = 13/3, more than a half circle.
    const hump: Path = {
      start: at(0, 0),
      segments: [
        { kind: 'cubic', c1: at(0, 8), c2: at(8, 8), to: at(8, 0) },
        { kind: 'line', to: at(0, 0) },
      ],
      closed: true,
    };
    const arc = arcOf(value(setSegmentKind(hump, 0, 'arc')).path, 0);
    expect(arc.centre.x).toBeCloseTo(4, 10);
    expect(arc.centre.y).toBeCloseTo(6 - 13 / 3, 10);
    expect(arc.clockwise).toBe(false);
  });

  it('leaves an arc, or turns it to the side that is told', () => {
    expect(value(setSegmentKind(arched, 0, 'arc')).path.segments[0]).toEqual(arched.segments[0]);
    const inward = value(setSegmentKind(arched, 0, 'arc', { bulge: 'inward' })).path;
    expect(arcOf(inward, 0).centre).toEqual(at(3, -4));
  });

  it('makes a line the curve that lies on it, and that an arc again', () => {
    const curve = value(setSegmentKind(box, 1, 'curve')).path;
    expect(curve.segments[1]).toMatchObject({ kind: 'cubic', to: at(20, 20) });
    expect(nodesOf(curve)[1]?.after?.y).toBeCloseTo(20 / 3, 12);
    expect(nodesOf(curve)[2]?.before?.y).toBeCloseTo(40 / 3, 12);
    // Flat, so that it is a tenth of the chord of 20 high: r = (100 + 4) / 4 = 26, inside of the outline.
    expect(arcOf(value(setSegmentKind(curve, 1, 'arc')).path, 1).centre.x).toBeCloseTo(20 + 2 - 26, 9);
  });

  it('makes an arc curves that stay within a micron of it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 400, noNaN: true }),
        fc.double({ min: 0.05, max: 1.9, noNaN: true }),
        (chord, share) => {
          const path: Path = {
            start: at(0, 0),
            segments: [arcOfSagitta(at(0, 0), at(chord, 0), (share * chord) / 2, true), { kind: 'line', to: at(0, 0) }],
            closed: true,
          };
          const { path: curved } = value(setSegmentKind(path, 0, 'curve'));
          const centre = arcOf(path, 0).centre;
          const radius = gap(centre, path.start);
          let from = curved.start;
          for (const segment of curved.segments) {
            if (segment.kind === 'cubic')
              for (let step = 0; step <= 20; step += 1) {
                const t = step / 20;
                const mixed = (a: number, b: number, c: number, d: number): number =>
                  (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t * t * c + t ** 3 * d;
                const on = at(
                  mixed(from.x, segment.c1.x, segment.c2.x, segment.to.x),
                  mixed(from.y, segment.c1.y, segment.c2.y, segment.to.y),
                );
                expect(Math.abs(gap(on, centre) - radius)).toBeLessThan(1.01e-3);
              }
            from = segment.to;
          }
          expect(curved.segments.filter(({ kind }) => kind === 'arc')).toEqual([]);
        },
      ),
    );
  });

  it('needs one curve for a small quarter, and new nodes for more', () => {
    // 2.7253e-4 of the radius for a quarter turn (reference): 1.4 µm at 5 mm, so two; at 3 mm 0.8 µm, so one.
    const two = value(setSegmentKind(swelled, 1, 'curve'));
    expect(two.added).toEqual([2]);
    expect(two.went).toEqual([0, 1, 3, 4, 5, 6, 7, 8, 9]);
    expect(nodesOf(two.path)[2]?.at.x).toBeCloseTo(30 + 5 * Math.SQRT1_2, 12);
    expect(distanceToPath(swelled, nodesOf(two.path)[2]?.at ?? at(0, 0))).toBeLessThan(1e-9);
    const small: Path = {
      start: at(3, 0),
      segments: [
        { kind: 'arc', to: at(0, 3), centre: at(0, 0), clockwise: true },
        { kind: 'line', to: at(0, 0) },
      ],
      closed: true,
    };
    const one = value(setSegmentKind(small, 0, 'curve'));
    expect(one.added).toEqual([]);
    // The usual handle 4/3·(√2 − 1) of the radius.
    expect(nodesOf(one.path)[0]?.after?.y).toBeCloseTo(3 * 0.5522847498307935, 12);
  });

  it('does the partner too', () => {
    const both = value(setSegmentKind(swelled, 1, 'curve', {}, true));
    expect(both.added).toEqual([2, 10]);
    expectMirrored(both.path);
    expectMirrored(value(setSegmentKind(swelled, 0, 'arc', {}, true)).path);
    expectMirrored(value(setSegmentKind(swelled, 0, 'curve', {}, true)).path);
    expectSame(
      value(setSegmentKind(value(setSegmentKind(swelled, 0, 'arc', {}, true)).path, 0, 'line', {}, true)).path,
      swelled,
    );
  });

  it('encloses what jsts finds', () => {
    const edited = [
      value(setSegmentKind(swelled, 4, 'arc', {}, true)).path,
      value(setRadius(swelled, 0, 60, 'inward', true)),
      value(setSegmentKind(swelled, 2, 'arc', { size: { sagitta: 4 } })).path,
    ];
    for (const path of edited) expect(Math.abs(pathArea(path) - jstsArea(path))).toBeLessThan(1e-6);
  });
});
