import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Hand, Project } from '../../../src/core/document/types';
import { buildDrawing } from '../../../src/core/drawing/buildDrawing';
import type { Item, TextItem } from '../../../src/core/drawing/types';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import type { Path, Point } from '../../../src/core/geom/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { usualBridge } from '../../../src/core/kinds/usualBridge';
import { steelProject, steelWith } from '../document/steelProject';

const MM = { unit: 'mm', decimals: 1 } as const;
const draw = (project: Project, hand: Hand): readonly Item[] =>
  buildDrawing(createDerive()(project), { hand, datum: project.instrument.nut.datum, style: MM });
const projects = [
  ...KINDS.map(({ name, make }) => [name, make('p', '2026-01-01T00:00:00Z')] as const),
  ['the demo', demoProject('p', '2026-01-01T00:00:00Z')] as const,
  ...(['rectangular', 'belly-nut', 'pyramid-tip', 'double-sided'] as const).map(
    (shape) => [shape, { ...steelProject, bridge: usualBridge(shape) }] as const,
  ),
  [
    'outer pin holes',
    steelWith({ bridge: { locating: { site: 'outer-pin-holes', drill: 3, points: null, clearance: 0.5 } } }),
  ] as const,
];

/** Same for either hand: the words beside the square line and the arrow to the nut. */
const fixed = ({ id }: Item): boolean => id.startsWith('square-line') || id.startsWith('nut-');

const mirrored = (path: Path): Path => {
  const flip = ({ x, y }: Point): Point => ({ x: x === 0 ? 0 : -x, y });
  return {
    ...path,
    start: flip(path.start),
    segments: path.segments.map((segment) => {
      if (segment.kind === 'line') return { ...segment, to: flip(segment.to) };
      if (segment.kind === 'arc')
        return { ...segment, to: flip(segment.to), centre: flip(segment.centre), clockwise: !segment.clockwise };
      return { ...segment, to: flip(segment.to), c1: flip(segment.c1), c2: flip(segment.c2) };
    }),
  };
};

describe.each(projects)('the drawing of %s', (_, project) => {
  const right = draw(project, 'right');
  const left = draw(project, 'left');

  it('has each id once', () => {
    expect(right.length).toBeGreaterThan(30);
    expect(new Set(right.map(({ id }) => id)).size).toBe(right.length);
  });

  it('shows a left hand mirrored, with the same words upright', () => {
    expect(left.map(({ id }) => id)).toEqual(right.map(({ id }) => id));
    for (const [index, item] of left.entries()) {
      const other = right[index];
      if (item.kind === 'path' && other?.kind === 'path')
        expect(item.path).toEqual(fixed(item) ? other.path : mirrored(other.path));
      if (item.kind === 'text' && other?.kind === 'text') {
        expect([item.text, item.height, item.angle]).toEqual([other.text, other.height, other.angle]);
        expect(item.at.y).toBe(other.at.y);
        expect(item.at.x).toBeCloseTo(fixed(item) ? other.at.x : -other.at.x, 12);
      }
    }
  });

  it('never turns words upside down, and keeps them readable', () => {
    for (const item of [...left, ...right])
      if (item.kind === 'text') {
        expect(Math.abs(item.angle)).toBeLessThanOrEqual(Math.PI / 2);
        expect(item.height).toBeGreaterThanOrEqual(2.9);
      }
  });
});

describe('the drawing', () => {
  const text = (items: readonly Item[], id: string): TextItem => {
    const found = items.find((item): item is TextItem => item.kind === 'text' && item.id === id);
    if (found === undefined) throw new Error(`There is no text ${id}.`);
    return found;
  };

  it('has TREBLE on the left of a left-hand instrument, on the right of a right-hand one', () => {
    expect(text(draw(steelProject, 'left'), 'treble-label').at.x).toBeLessThan(0);
    expect(text(draw(steelProject, 'right'), 'treble-label').at.x).toBeGreaterThan(0);
    expect(text(draw(steelProject, 'left'), 'treble-label').text).toBe('TREBLE');
    expect(text(draw(steelProject, 'left'), 'bass-label').at.x).toBeGreaterThan(0);
  });

  // Bridge front 638.79; 15 mm ahead of it the last ten is 620, 297.5 from the 12th fret at 322.5.
  it('tells the square line from every datum', () => {
    const items = draw(steelProject, 'right');
    expect(text(items, 'square-line-nut').text).toBe('620.0 mm');
    expect(text(items, 'square-line-nut-from').text).toBe('from the nut');
    expect(text(items, 'square-line-twelfth').text).toBe('297.5 mm');
    const nut = { datum: 'zero-fret' as const, offset: 0, face: 4.5 };
    const zero = draw(steelWith({ instrument: { nut } }), 'right');
    expect(text(zero, 'square-line-face').text).toBe('624.5 mm');
    expect(text(zero, 'square-line-nut-from').text).toBe('from the zero fret');
  });

  it('tells the square line in inches at a round figure of its own', () => {
    const style = { unit: 'in', denominator: 64 } as const;
    const items = buildDrawing(createDerive()(steelProject), { hand: 'right', datum: 'front', style });
    // 638.79 − 15 = 623.79 = 24.56 in: 24 1/2 in.
    expect(text(items, 'square-line-nut').text).toBe('24 1/2″');
    expect(text(items, 'octave-label').text).toBe('octave line 25 25/64″');
  });

  it('puts everything in its place: centreline, board edges, strings, holes', () => {
    const items = draw(steelProject, 'right');
    const path = (id: string): Path => {
      const found = items.find((item) => item.kind === 'path' && item.id === id);
      if (found?.kind !== 'path') throw new Error(`There is no line ${id}.`);
      return found.path;
    };
    const end = (id: string): Point => path(id).segments.at(-1)?.to ?? path(id).start;
    expect([path('centreline').start.x, end('centreline').x]).toEqual([0, 0]);
    // Board edge: half of 46 + 11 · y / 322.5.
    const edge = path('board-treble');
    for (const { x, y } of [edge.start, end('board-treble')]) expect(x).toBeCloseTo(23 + (5.5 * y) / 322.5, 9);
    // String 1 ends where it breaks, at x 27 and 646.5875.
    expect(end('string-1').x).toBeCloseTo(27, 9);
    expect(end('string-1').y).toBeCloseTo(646.5875, 9);
    expect(end('string-6').x).toBeCloseTo(-27, 9);
    expect(end('string-6').y).toBeCloseTo(648.96875, 9);
    // String 1 at the nut: 23 − 3 − 0.1524 = 19.8476; along its line at the top of the drawing.
    const top = path('string-1').start;
    expect(top.x).toBeCloseTo(19.8476 + ((27 - 19.8476) * top.y) / 646.5875, 9);
    expect(path('octave-treble').start.y).toBe(645);
    // Bridge front 638.79, so square line at 620, straight across.
    expect([path('square-line').start.y, end('square-line').y]).toEqual([620, 620]);
  });

  const ends = (items: readonly Item[], id: string): readonly number[] => {
    const found = items.find((item) => item.kind === 'path' && item.id === id);
    if (found?.kind !== 'path') throw new Error(`There is no line ${id}.`);
    return [found.path.start.x, found.path.segments.at(-1)?.to.x ?? Number.NaN];
  };

  // Half of the slot, 38.1, at the slant of 2.525° reaches 38.063; 3 clear of that. To 6 inside the tip at 76.2.
  it('ends the octave line within the tips of a long bridge, its words over it', () => {
    const items = draw(steelProject, 'right');
    for (const [id, sign] of [
      ['octave-treble', 1],
      ['octave-bass', -1],
    ] as const) {
      expect(ends(items, id)[0]).toBeCloseTo(sign * 41.063, 2);
      expect(ends(items, id)[1]).toBeCloseTo(sign * 70.2, 9);
    }
    expect(text(items, 'octave-label')).toMatchObject({ anchor: 'start', at: { x: expect.closeTo(-69.2, 9), y: 643 } });
  });

  // Slot front 646.189 less 13 to the belly's foremost point, 633.189; the wings lie 34.925 − 25.4 = 9.525 behind that, so at
  // 642.714: windows of 10 about it and about the back edge, 668.114. Words over the octave line at 645 would meet the wing.
  it('sets the windows of a belly toward the nut on its wings, the words of the octave line behind it', () => {
    const items = draw({ ...steelProject, bridge: usualBridge('belly-nut') }, 'right');
    const window = (id: string) => {
      const item = items.find((each) => each.id === id);
      if (item?.kind !== 'path') throw new Error(`There is no window ${id}.`);
      return pathBounds(item.path);
    };
    for (const side of ['treble', 'bass']) {
      const centre = side === 'treble' ? 76.2 : -76.2;
      for (const [edge, y] of [
        ['front', 642.714],
        ['back', 668.114],
      ] as const) {
        const { minX, maxX, minY, maxY } = window(`window-${edge}-${side}`);
        expect([(minX + maxX) / 2, (minY + maxY) / 2]).toEqual([expect.closeTo(centre, 9), expect.closeTo(y, 3)]);
        expect([maxX - minX, maxY - minY]).toEqual([expect.closeTo(12, 9), expect.closeTo(10, 9)]);
      }
    }
    expect(text(items, 'octave-label').at.y).toBe(647);
  });

  it('draws the pyramids of a pyramid-tip bridge on its face', () => {
    const faces = draw({ ...steelProject, bridge: usualBridge('pyramid-tip') }, 'right').filter(
      ({ part }) => part === 'upper face',
    );
    expect(faces.map(({ id }) => id)).toEqual(['face-0', 'face-1', 'face-2', 'face-3', 'face-4', 'face-5']);
  });

  // A bridge of 76.2: its slot of 56, straight, leaves 31 to 32.1 within the tips, so the line runs on beyond the windows,
  // which stand out by 6, for 8 more: 38.1 + 14 = 52.1. The words stand beside it, 1 farther out, as high as the line.
  it('runs the octave line of a small bridge beyond its windows, its words beside it', () => {
    const ukulele = KINDS.find(({ id }) => id === 'tenor-ukulele')?.make('p', '2026-01-01T00:00:00Z') ?? steelProject;
    const items = draw(ukulele, 'right');
    for (const [id, sign] of [
      ['octave-treble', 1],
      ['octave-bass', -1],
    ] as const) {
      expect(ends(items, id)[0]).toBeCloseTo(sign * 31, 9);
      expect(ends(items, id)[1]).toBeCloseTo(sign * 52.1, 9);
    }
    const label = text(items, 'octave-label');
    expect(label).toMatchObject({
      text: 'octave line 432.0 mm',
      anchor: 'end',
      at: { x: expect.closeTo(-53.1, 9), y: 432 },
    });
    const windows = items.filter(({ id }) => id.startsWith('window-'));
    expect(windows).toHaveLength(4);
    for (const item of windows)
      if (item.kind === 'path')
        for (const { x } of [item.path.start, ...item.path.segments.map(({ to }) => to)])
          expect(Math.abs(x)).toBeLessThanOrEqual(44.1 + 1e-9);
  });

  it('is empty when the bridge could not be computed', () => {
    const derived = createDerive()({ ...steelProject, strings: [] });
    expect(buildDrawing(derived, { hand: 'right', datum: 'front', style: MM })).toEqual([]);
  });
});
