import { afterEach, describe, expect, it, vi } from 'vitest';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { mirrorPath } from '../../../../src/core/geom/mirrorPath';
import { offsetPath } from '../../../../src/core/geom/offset/offsetPath';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import { signedArea } from '../../../../src/core/geom/signedArea';
import type { Path } from '../../../../src/core/geom/types';
import { validatePath } from '../../../../src/core/geom/validatePath';
import { OFFSET_L, OFFSET_RECTANGLE } from '../../../reference/offset';
import { cubicLoop, polygon } from '../paths';

async function offset(path: Path, distance: number): Promise<readonly Path[]> {
  const found = await offsetPath(path, distance);
  if (!found.ok) throw new Error(found.issues[0]?.message);
  for (const outline of found.value) {
    expect(validatePath(outline)).toMatchObject({ ok: true });
    expect(outline.closed).toBe(true);
    expect(outline.segments.at(-1)?.to).toEqual(outline.start);
  }
  return found.value;
}

const areas = (paths: readonly Path[]): number[] => paths.map(signedArea).sort((a, b) => b - a);

/** The length of a path of lines and arcs: the angle of an arc from its chord, 2·asin(chord/2r), when it turns under π. */
function lengthOf(path: Path): number {
  let from = path.start;
  return path.segments.reduce((sum, segment) => {
    const chord = Math.hypot(segment.to.x - from.x, segment.to.y - from.y);
    const radius = segment.kind === 'arc' ? Math.hypot(from.x - segment.centre.x, from.y - segment.centre.y) : 0;
    from = segment.to;
    return sum + (segment.kind === 'arc' ? 2 * radius * Math.asin(chord / 2 / radius) : chord);
  }, 0);
}

describe('offsetPath', () => {
  const { width, height, by, grown, shrunk } = OFFSET_RECTANGLE;
  const rectangle = rectanglePath(-20, 30, width, height);

  it('grows a rectangle by lines and true quarter circles', async () => {
    const [outline, ...more] = await offset(rectangle, by);
    expect(more).toEqual([]);
    expect(outline?.segments.map(({ kind }) => kind).sort()).toEqual([
      ...Array(4).fill('arc'),
      ...Array(4).fill('line'),
    ]);
    expect(outline && signedArea(outline)).toBeCloseTo(grown.area, 6);
    expect(outline && lengthOf(outline)).toBeCloseTo(grown.length, 6);
  });

  it('shrinks a rectangle to a rectangle, on round figures', async () => {
    const [outline, ...more] = await offset(rectangle, -by);
    expect(more).toEqual([]);
    const corners = outline?.segments
      .map(({ to }) => [to.x, to.y])
      .sort(([a = 0, b = 0], [c = 0, d = 0]) => a - c || b - d);
    expect(corners).toEqual([
      [-15, 35],
      [-15, 85],
      [75, 35],
      [75, 85],
    ]);
    expect(outline && signedArea(outline)).toBeCloseTo(shrunk.area, 9);
    expect(outline && lengthOf(outline)).toBeCloseTo(shrunk.length, 9);
  });

  it('rounds the inner corner of an L when it shrinks, the outer ones when it grows', async () => {
    const path = polygon(OFFSET_L.corners);
    expect(areas(await offset(path, OFFSET_L.by))).toEqual([expect.closeTo(OFFSET_L.grown, 4)]);
    expect(areas(await offset(path, -OFFSET_L.by))).toEqual([expect.closeTo(OFFSET_L.shrunk, 4)]);
    expect(areas(await offset(path, -OFFSET_L.by))[0]).toBeGreaterThan(OFFSET_L.shrunkMitred);
  });

  it('keeps a circle a circle of two arcs', async () => {
    for (const [distance, radius] of [
      [2, 22],
      [-2, 18],
      [-19.9, 0.1],
    ] as const) {
      const [outline] = await offset(circlePath({ x: 3, y: 4 }, 20), distance);
      expect(outline?.segments).toHaveLength(2);
      for (const segment of outline?.segments ?? []) {
        expect(segment).toMatchObject({
          kind: 'arc',
          clockwise: true,
          centre: { x: expect.closeTo(3), y: expect.closeTo(4) },
        });
        expect(Math.hypot(segment.to.x - 3, segment.to.y - 4)).toBeCloseTo(radius, 6);
      }
    }
  });

  it('ends arcs that go over smoothly at their tangent points', async () => {
    // A slot of 20 × 8 with round ends about (±6, 0): by −1 the arcs end on x = ±6, y = ±3.
    const slot: Path = {
      start: { x: -6, y: -4 },
      segments: [
        { kind: 'line', to: { x: 6, y: -4 } },
        { kind: 'arc', to: { x: 6, y: 4 }, centre: { x: 6, y: 0 }, clockwise: true },
        { kind: 'line', to: { x: -6, y: 4 } },
        { kind: 'arc', to: { x: -6, y: -4 }, centre: { x: -6, y: 0 }, clockwise: true },
      ],
      closed: true,
    };
    const [outline] = await offset(slot, -1);
    expect(outline?.segments).toHaveLength(4);
    for (const { to } of outline?.segments ?? []) {
      expect(Math.abs(to.x)).toBeCloseTo(6, 9);
      expect(Math.abs(to.y)).toBeCloseTo(3, 9);
    }
  });

  it('does not mind which way the outline runs, nor a start repeated or not', async () => {
    const mirrored = mirrorPath(cubicLoop);
    expect(Math.sign(signedArea(mirrored))).toBe(-1);
    const [one] = areas(await offset(cubicLoop, -3));
    expect(areas(await offset(mirrored, -3))).toEqual([expect.closeTo(one ?? Number.NaN, 3)]);
    const open = polygon(OFFSET_L.corners);
    const repeated: Path = { ...open, segments: [...open.segments, { kind: 'line', to: open.start }] };
    expect(areas(await offset(repeated, 2))).toEqual(areas(await offset(open, 2)));
  });

  it('leaves an outline as it is at a distance of 0', async () => {
    expect(areas(await offset(rectangle, 0))).toEqual([6000]);
    expect(areas(await offset(circlePath({ x: 0, y: 0 }, 10), 0))).toEqual([expect.closeTo(100 * Math.PI, 6)]);
  });

  it('falls in two at a neck', async () => {
    // Two squares of 20 joined by a neck 4 wide: by −3 two squares of 14 are left, each with a tip toward the neck, where
    // the walls give way to quarter circles about its corners: 2·∫(3 − √(9 − v²))dv from 0 to 2.
    const neck = [
      [0, 0],
      [20, 0],
      [20, 8],
      [30, 8],
      [30, 0],
      [50, 0],
      [50, 20],
      [30, 20],
      [30, 12],
      [20, 12],
      [20, 20],
      [0, 20],
    ];
    const each = expect.closeTo(14 * 14 + 12 - 2 * Math.sqrt(5) - 9 * Math.asin(2 / 3), 4);
    expect(areas(await offset(polygon(neck), -3))).toEqual([each, each]);
  });

  it('closes round a hole, which runs the other way', async () => {
    // A frame of 40 outside and 20 inside with a slit 2 wide in one wall: by +2 the slit closes, 16 × 16 stay free.
    const frame = [
      [0, 0],
      [40, 0],
      [40, 19],
      [30, 19],
      [30, 10],
      [10, 10],
      [10, 30],
      [30, 30],
      [30, 21],
      [40, 21],
      [40, 40],
      [0, 40],
    ];
    const [outer, hole, ...more] = areas(await offset(polygon(frame), 2));
    expect(more).toEqual([]);
    // Outside 40² + 4·80 + 4π, but for a notch where the slit meets the wall: two arcs of radius 2 about corners 2 apart
    // cross √3 beyond the wall, so between them 2·2 − (√3 + 4·π/6) is missing.
    const notch = 2 * 2 - (Math.sqrt(3) + (2 * Math.PI) / 3);
    expect(outer).toBeCloseTo(40 * 40 + 4 * 80 + 4 * Math.PI - notch, 4);
    // Inside the same notch is free besides.
    expect(hole).toBeCloseTo(-(16 * 16 + notch), 4);
  });

  it.each([
    ['a rectangle by half of its width', rectanglePath(0, 0, 40, 10), -5],
    ['a rectangle by more', rectanglePath(0, 0, 40, 10), -999],
    ['a circle by its radius', circlePath({ x: 1, y: 2 }, 8), -8],
    [
      'a triangle by more than its inscribed circle',
      polygon([
        [0, 0],
        [40, 0],
        [0, 30],
      ]),
      -10.1,
    ],
  ] as const)('vanishes: %s', async (_what, path, distance) => {
    expect(await offset(path, distance)).toEqual([]);
  });
});

describe('offsetPath refuses', () => {
  const bow = [
    [0, 0],
    [10, 10],
    [10, 0],
    [0, 10],
  ];
  const touching = [
    [0, 0],
    [20, 0],
    [20, 10],
    [10, 0],
    [0, 10],
  ];
  const turnedTwice = [
    [0, 0],
    [20, 0],
    [20, 20],
    [2, 20],
    [2, 2],
    [18, 2],
    [18, 18],
    [0, 18],
  ];
  const looped: Path = {
    start: { x: 0, y: 0 },
    segments: [
      { kind: 'cubic', c1: { x: 60, y: 40 }, c2: { x: -20, y: 40 }, to: { x: 40, y: 0 } },
      { kind: 'line', to: { x: 20, y: -20 } },
    ],
    closed: true,
  };
  const square = rectanglePath(0, 0, 10, 10);
  it.each([
    ['an open path', { ...square, closed: false }, 1, 'path.open'],
    [
      'a coordinate that is no number',
      polygon([
        [0, 0],
        [Number.NaN, 0],
        [5, 5],
      ]),
      1,
      'path.notFinite',
    ],
    ['a bow', polygon(bow), 1, 'path.crossing'],
    ['an outline that touches itself', polygon(touching), 1, 'path.crossing'],
    ['an outline that turns twice about', polygon(turnedTwice), 1, 'path.crossing'],
    ['a cubic with a loop', looped, 1, 'path.crossing'],
    [
      'there and back',
      polygon([
        [0, 0],
        [10, 0],
      ]),
      1,
      'path.noArea',
    ],
    ['no segments', { start: { x: 0, y: 0 }, segments: [], closed: true }, 1, 'path.noArea'],
    ['an outline in the next street', rectanglePath(20_000, 0, 10, 10), 1, 'path.tooLarge'],
    ['a distance that is no number', square, Number.NaN, 'offset.distance'],
    ['an endless distance', square, Number.POSITIVE_INFINITY, 'offset.distance'],
    ['a distance over a metre', square, -1000.1, 'offset.distance'],
  ] as const)('%s', async (_what, path, distance, code) => {
    expect(await offsetPath(path, distance)).toMatchObject({ ok: false, issues: [{ code }] });
  });

  it('says where an outline crosses itself', async () => {
    const found = await offsetPath(
      polygon([
        [100, 200],
        [110, 210],
        [110, 201],
        [100, 209],
      ]),
      1,
    );
    // By hand: y = 200 + t and y = 201 + 0.8·(10 − t) meet at t = 5.
    expect(found).toMatchObject({ ok: false, issues: [{ message: expect.stringContaining('105.000, 205.000') }] });
  });
});

describe('offsetPath without its library', () => {
  afterEach(() => {
    vi.doUnmock('clipper2-ts');
    vi.resetModules();
  });

  it('answers that it could not be loaded', async () => {
    vi.resetModules();
    vi.doMock('clipper2-ts', () => {
      throw new Error('offline');
    });
    const alone = await import('../../../../src/core/geom/offset/offsetPath');
    expect(await alone.offsetPath(rectanglePath(0, 0, 10, 10), 1)).toMatchObject({
      ok: false,
      issues: [{ code: 'offset.notLoaded' }],
    });
  });
});
