import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centrelineCrossings } from '../../../../src/core/geom/edit/centrelineCrossings';
import { crossingOf } from '../../../../src/core/geom/edit/crossingOf';
import { moveNode } from '../../../../src/core/geom/edit/moveNode';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { outlineFaults } from '../../../../src/core/geom/edit/outlineFaults';
import { setRadius } from '../../../../src/core/geom/edit/setRadius';
import type { Path } from '../../../../src/core/geom/types';
import { polygon } from '../paths';
import { jstsSimple } from './jstsArea';
import { arched, at, box, flowing, swelled, value } from './outlines';

const codes = (path: Path): readonly string[] => outlineFaults(path).map(({ code }) => code);

const rectangle = (length: number, width: number): Path =>
  polygon([
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ]);

describe('outlineFaults', () => {
  it('finds none in sound outlines', () => {
    for (const path of [box, swelled, arched, flowing]) expect(outlineFaults(path)).toEqual([]);
  });

  it('finds an open one, and figures that are none', () => {
    expect(codes({ ...box, closed: false })).toEqual(['path.open']);
    expect(
      codes(
        polygon([
          [0, 0],
          [Number.NaN, 0],
          [9, 9],
        ]),
      ),
    ).toEqual(['path.notFinite']);
  });

  it('finds where it crosses itself', () => {
    // Sides from (40, 0) to (0, 20) and from (40, 20) to (0, 0): they cross at (20, 10).
    const bow = polygon([
      [0, 0],
      [40, 0],
      [0, 20],
      [40, 20],
    ]);
    expect(crossingOf(bow)).toEqual(at(20, 10));
    // Both halves cancel, which is not told as too small.
    expect(codes(bow)).toEqual(['outline.crossing']);
    expect(outlineFaults(bow).at(-1)?.message).toContain('20.0 mm to the treble side, 10.0 mm behind the front edge');
    const loop: Path = {
      start: at(-20, 0),
      segments: [
        { kind: 'cubic', c1: at(60, 40), c2: at(-60, 40), to: at(20, 0) },
        { kind: 'line', to: at(20, -20) },
        { kind: 'line', to: at(-20, -20) },
      ],
      closed: true,
    };
    expect(codes(loop)).toEqual(['outline.crossing']);
    // By its symmetry the curve meets itself on the centreline.
    expect(crossingOf(loop)?.x).toBeCloseTo(0, 2);
  });

  it('finds a spike that just pierces the far side', () => {
    const spiked = (reach: number) =>
      codes(
        polygon([
          [0, 0],
          [10, 0],
          [10, 40],
          [0, 40],
          [0, 22],
          [reach, 20],
          [0, 18],
        ]),
      );
    expect(spiked(10.001)).toEqual(['outline.crossing']);
    expect(spiked(10)).toEqual(['outline.crossing']);
    expect(spiked(9.999)).toEqual([]);
  });

  it('finds an arc that swells over another side', () => {
    // 18 high over a chord of 12, the greater part of a circle of 10 about (24, 2): down to y −8.
    const swollen: Path = {
      start: at(0, 0),
      segments: [
        { kind: 'line', to: at(60, 0) },
        { kind: 'line', to: at(60, 10) },
        { kind: 'line', to: at(30, 10) },
        { kind: 'arc', to: at(18, 10), centre: at(24, 2), clockwise: false },
        { kind: 'line', to: at(0, 10) },
      ],
      closed: true,
    };
    expect(codes(swollen)).toEqual(['outline.crossing']);
    expect(
      codes({
        ...swollen,
        segments: swollen.segments.map((each) => (each.kind === 'arc' ? { ...each, clockwise: true } : each)),
      }),
    ).toEqual([]);
  });

  it('finds a shallow arc that reaches the other edge', () => {
    // r 25 over 40 bulges by 10 into a box of 8, or of 11.
    const dented = (width: number) =>
      value(
        setRadius(
          { ...box, segments: [at(20, 0), at(20, width), at(-20, width)].map((to) => ({ kind: 'line', to })) },
          0,
          25,
          'inward',
        ),
      );
    expect(codes(dented(8))).toEqual(['outline.crossing']);
    expect(codes(dented(11))).toEqual([]);
  });

  it('does not take a node that is there twice for a crossing', () => {
    expect(
      crossingOf(
        polygon([
          [0, 0],
          [40, 0],
          [40, 0],
          [40, 20],
          [0, 20],
        ]),
      ),
    ).toBeNull();
  });

  it('takes nodes within a nanometre of each other for one', () => {
    for (const [x, y] of [
      [1e-9, 0],
      [0, -1e-9],
    ] as const)
      expect(crossingOf(value(moveNode(flowing, 4, at(x, y))))).toBeNull();
  });

  it('agrees with jsts on outlines with a node gone astray', () => {
    // Whole microns: below that the two differ on which points are one.
    const coordinate = fc.integer({ min: -50_000, max: 50_000 }).map((microns) => microns / 1000);
    fc.assert(
      fc.property(
        fc.constantFrom(box, swelled, flowing),
        fc.nat({ max: 20 }),
        coordinate,
        coordinate,
        (path, number, x, y) => {
          const moved = moveNode(path, number % nodesOf(path).length, at(x, y));
          if (moved.ok) expect(crossingOf(moved.value) === null).toBe(jstsSimple(moved.value));
        },
      ),
    );
  });

  it('holds the size to 5 and 500 mm both ways', () => {
    expect(codes(rectangle(500, 5))).toEqual([]);
    expect(codes(rectangle(500.01, 5))).toEqual(['outline.size']);
    expect(codes(rectangle(500, 4.99))).toEqual(['outline.size']);
    expect(outlineFaults(rectangle(500.01, 20))[0]?.message).toContain('500.01 mm');
    expect(codes(rectangle(4, 4))).toEqual(['outline.size', 'outline.size', 'outline.tiny']);
  });

  it('wants 25 mm² at least', () => {
    const sliver = (height: number) =>
      polygon([
        [0, 0],
        [10, height],
        [10, 0.2 + height],
      ]);
    // ½·10·0.2 = 1.
    expect(codes(sliver(8))).toEqual(['outline.tiny']);
    expect(codes(rectangle(5, 5))).toEqual([]);
  });

  it('wants 2000 nodes at most', () => {
    const round = (count: number) =>
      polygon(
        Array.from({ length: count }, (_, index) => [
          100 * Math.cos((2 * Math.PI * index) / count),
          100 * Math.sin((2 * Math.PI * index) / count),
        ]),
      );
    expect(codes(round(2000))).toEqual([]);
    expect(codes(round(2001))).toEqual(['outline.nodes']);
  });
});

describe('centrelineCrossings', () => {
  it('finds lines, by hand', () => {
    expect(centrelineCrossings(box)).toEqual([
      { segment: 0, t: 0.5, y: 0 },
      { segment: 2, t: 0.5, y: 20 },
    ]);
  });

  it('finds nodes on the centreline once', () => {
    expect(centrelineCrossings(swelled)).toEqual([
      { segment: 0, t: 0.5, y: 0 },
      { segment: 5, t: 0, y: 28 },
    ]);
    // A circle of 5 about (0, 5) by two arcs from one side of the centreline to the other.
    const round: Path = {
      start: at(0, 0),
      segments: [
        { kind: 'arc', to: at(0, 10), centre: at(0, 5), clockwise: true },
        { kind: 'arc', to: at(0, 0), centre: at(0, 5), clockwise: true },
      ],
      closed: true,
    };
    expect(centrelineCrossings(round)).toEqual([
      { segment: 0, t: 0, y: 0 },
      { segment: 1, t: 0, y: 10 },
    ]);
  });

  it('counts arcs that meet on the centreline there alone, whatever the rounding', () => {
    const figure = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(figure, figure, fc.double({ min: 0.5, max: 40, noNaN: true }), (x, y, half) => {
        // Both arcs of the circle about (x, y) through (0, y ± half).
        const path: Path = {
          start: at(0, y - half),
          segments: [at(0, y + half), at(0, y - half)].map((to) => ({
            kind: 'arc',
            to,
            centre: at(x, y),
            clockwise: true,
          })),
          closed: true,
        };
        expect(centrelineCrossings(path).map(({ segment, t }) => [segment, t])).toEqual([
          [0, 0],
          [1, 0],
        ]);
      }),
    );
  });

  it('finds arcs, twice where they cross twice, and no others', () => {
    // About (3, 0), r 5, from (7, −3) round to (7, 3): across at (0, ±4).
    const arc = (centre: number): Path => ({
      start: at(centre + 4, -3),
      segments: [{ kind: 'arc', to: at(centre + 4, 3), centre: at(centre, 0), clockwise: false }],
      closed: true,
    });
    const found = centrelineCrossings(arc(3));
    expect(found.map(({ segment }) => segment)).toEqual([0, 0]);
    expect(found.map(({ y }) => y)).toEqual([expect.closeTo(-4, 12), expect.closeTo(4, 12)]);
    expect(found.map(({ t }) => t)[0]).toBeLessThan(0.5);
    expect(centrelineCrossings(arc(6))).toEqual([]);
  });

  it('finds a curve where its x is zero', () => {
    // x = −6 (1−t)³ + 6 t³ is zero at ½, where y = ¾·8 = 6.
    const path: Path = {
      start: at(-6, 0),
      segments: [{ kind: 'cubic', c1: at(0, 8), c2: at(0, 8), to: at(6, 0) }],
      closed: false,
    };
    expect(centrelineCrossings(path)).toEqual([{ segment: 0, t: expect.closeTo(0.5, 12), y: expect.closeTo(6, 12) }]);
  });
});
