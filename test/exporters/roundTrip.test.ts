import { describe, expect, it } from 'vitest';
import type { Hand, Project } from '../../src/core/document/types';
import type { Item } from '../../src/core/drawing/types';
import { closedSegments } from '../../src/core/geom/closedSegments';
import { cubicPoint } from '../../src/core/geom/cubicPoint';
import { distanceToPath } from '../../src/core/geom/distanceToPath';
import { splitSegment } from '../../src/core/geom/edit/splitSegment';
import { pathArea } from '../../src/core/geom/pathArea';
import type { Path, Point } from '../../src/core/geom/types';
import { demoProject } from '../../src/core/kinds/demo';
import { makeDxf } from '../../src/exporters/dxf/makeDxf';
import { makeSvg } from '../../src/exporters/svg/makeSvg';
import { readFile } from '../importers/foundBox';
import { instrumentNamed } from '../readback/makeTemplate';
import { ITEMS, OUTLINE } from '../reference/fileDrawing';
import { unwrap } from './pdf/unwrap';
import { handedProject, wholeDrawing } from './wholeDrawing';

/** What comes back may be off by this much, mm. */
const NEAR = 0.01;

/** The outline made up by hand, twice as wide, its corners cut straight. */
const drawnProject = (): Project => {
  const project = demoProject('drawn', '2026-11-25T00:00:00Z');
  const path: Path = {
    start: { x: -60, y: 0 },
    segments: OUTLINE.segments.map((segment) => {
      const down = ({ x, y }: Point): Point => ({ x: x * 2, y: y - 500 });
      if (segment.kind === 'cubic')
        return { kind: 'cubic', c1: down(segment.c1), c2: down(segment.c2), to: down(segment.to) };
      return { kind: 'line', to: down(segment.to) };
    }),
    closed: true,
  };
  return { ...project, bridge: { ...project.bridge, outline: { kind: 'drawn', path, symmetric: false } } };
};

const PROJECTS: readonly (readonly [string, () => Project])[] = [
  ['the demo', () => demoProject('demo', '2026-11-25T00:00:00Z')],
  ['a steel-string', () => instrumentNamed('steel')],
  ['a classical', () => instrumentNamed('classical')],
  ['a ukulele', () => instrumentNamed('ukulele')],
  ['an outline drawn freely', drawnProject],
];

const FILES: readonly (readonly [string, (items: readonly Item[]) => string])[] = [
  ['SVG', (items) => unwrap(makeSvg({ title: 'it', description: '', items }))],
  ['DXF 2007', (items) => unwrap(makeDxf({ items }, '2007'))],
  ['DXF R12', (items) => unwrap(makeDxf({ items }, 'R12'))],
];

/** Points along a path, five to a segment. */
const along = (path: Path): readonly Point[] =>
  closedSegments(path).flatMap(({ start, segment }) =>
    [0.2, 0.4, 0.6, 0.8, 1].map((t) =>
      segment.kind === 'cubic' ? cubicPoint(start, segment, t) : splitSegment(start, segment, t)[0].to,
    ),
  );

const farthest = (from: Path, to: Path): number => Math.max(...along(from).map((point) => distanceToPath(to, point)));

const outlineIn = (items: readonly Item[]): Path => {
  const item = items.find(({ id }) => id === 'footprint');
  if (item?.kind !== 'path') throw new Error('nothing is drawn');
  return item.path;
};

/** The file's outline, once it is moved, and the drawing's are to be the same one in the same place. */
const expectSame = (file: string, items: readonly Item[], moved: Point): void => {
  const wanted = outlineIn(items);
  const found = readFile(file).outlines.filter(({ area }) => Math.abs(area / pathArea(wanted) - 1) < 1e-3);
  expect(found.map(({ refusal }) => refusal)).toEqual([null]);
  const path = found[0]?.path ?? wanted;
  const shift = ({ x, y }: Point): Point => ({ x: x + moved.x, y: y + moved.y });
  const placed: Path = {
    ...path,
    start: shift(path.start),
    segments: path.segments.map((segment) => {
      if (segment.kind === 'line') return { ...segment, to: shift(segment.to) };
      if (segment.kind === 'arc') return { ...segment, to: shift(segment.to), centre: shift(segment.centre) };
      return { ...segment, to: shift(segment.to), c1: shift(segment.c1), c2: shift(segment.c2) };
    }),
  };
  expect(Math.max(farthest(placed, wanted), farthest(wanted, placed))).toBeLessThan(NEAR);
};

const cornerOf = (svg: string): Point => {
  const [, x = '', y = ''] = /viewBox="(\S+) (\S+) /.exec(svg) ?? [];
  return { x: Number(x), y: Number(y) };
};

const HANDS: readonly Hand[] = ['right', 'left'];

describe.each(FILES)('our own %s, read back by our own importer', (name, write) => {
  it.each(PROJECTS.flatMap(([what, make]) => HANDS.map((hand) => [what, hand, make] as const)))(
    'has the outline of %s, %s hand',
    async (_, hand, make) => {
      const items = await wholeDrawing(handedProject(make(), hand));
      expect(readFile(write(items)).units).toMatch(/as the file says/);
      // What is read from an SVG begins at the corner of its frame; a DXF is turned over when it is written, and back.
      expectSame(write(items), items, name === 'SVG' ? cornerOf(write(items)) : { x: 0, y: 0 });
    },
  );

  it('keeps arcs as arcs', () => {
    const [first] = readFile(write(ITEMS)).outlines;
    const kinds = first?.path.segments.map(({ kind }) => kind) ?? [];
    expect(kinds.filter((kind) => kind === 'line')).toHaveLength(3);
    if (name === 'DXF R12') expect(new Set(kinds)).toEqual(new Set(['line', 'arc']));
    else expect(kinds.filter((kind) => kind === 'arc')).toHaveLength(4);
    expect(kinds.filter((kind) => kind === 'cubic')).toHaveLength(name === 'DXF R12' ? 0 : 2);
  });
});
