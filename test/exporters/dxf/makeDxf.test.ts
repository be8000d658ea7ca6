import { parseString, toPolylines } from 'dxf';
import { describe, expect, it } from 'vitest';
import { mirrorPath } from '../../../src/core/geom/mirrorPath';
import { makeDxf } from '../../../src/exporters/dxf/makeDxf';
import { ITEMS } from '../../reference/fileDrawing';
import { unwrap } from '../pdf/unwrap';
import { headerOf, numbersOf, type ReadEntity, sectionOf, valuesOf } from './dxfGroups';

const VERSIONS = ['2007', 'R12'] as const;
const dxf = (version: (typeof VERSIONS)[number], items = ITEMS): string => unwrap(makeDxf({ items }, version));
const entities = (version: (typeof VERSIONS)[number], items = ITEMS): readonly ReadEntity[] =>
  sectionOf(dxf(version, items), 'ENTITIES').slice(1);
const on = (all: readonly ReadEntity[], layer: string): readonly ReadEntity[] =>
  all.filter((entity) => valuesOf(entity, 8)[0] === layer);
const kinds = (all: readonly ReadEntity[]): readonly string[] => all.map(({ kind }) => kind);
const points = (entity: ReadEntity | undefined): readonly (readonly number[])[] => {
  if (entity === undefined) return [];
  const [xs, ys] = [numbersOf(entity, 10), numbersOf(entity, 20)];
  return xs.map((x, index) => [x, ys[index] ?? Number.NaN]);
};

/** tan of a quarter of a quarter turn, √2 − 1. */
const QUARTER = Math.SQRT2 - 1;

describe.each(VERSIONS)('a DXF of %s', (version) => {
  it('declares millimetres (Autodesk, DXF reference: $INSUNITS 4, $MEASUREMENT 1)', () => {
    expect(headerOf(dxf(version), '$INSUNITS')).toEqual(['4']);
    expect(headerOf(dxf(version), '$MEASUREMENT')).toEqual(['1']);
    expect(headerOf(dxf(version), '$ACADVER')).toEqual([version === 'R12' ? 'AC1009' : 'AC1021']);
  });

  it('has a layer for each kind of line, with its ISO line type', () => {
    const layers = sectionOf(dxf(version), 'TABLES')
      .filter(({ kind }) => kind === 'LAYER')
      .map((layer) => [valuesOf(layer, 2)[0], valuesOf(layer, 6)[0]]);
    expect(layers).toEqual([
      ['0', 'CONTINUOUS'],
      ['WINDOWS', 'CONTINUOUS'],
      ['BRIDGE', 'CONTINUOUS'],
      ['SLOT', 'CONTINUOUS'],
      ['SLOT-CENTRELINE', 'ISO_128_04'],
      ['PINS', 'CONTINUOUS'],
      ['TEXT', 'CONTINUOUS'],
      ['BOARD-TEXT', 'CONTINUOUS'],
    ]);
    const [type] = sectionOf(dxf(version), 'TABLES').filter(
      (entry) => entry.kind === 'LTYPE' && valuesOf(entry, 2)[0] === 'ISO_128_04',
    );
    expect(type && numbersOf(type, 49)).toEqual([7, -1.2, 0.8, -1.2]);
  });

  it('has y up: minus the distance from the nut datum', () => {
    const [window] = on(entities(version), 'WINDOWS');
    const corners = on(entities(version), 'WINDOWS').flatMap((entity) =>
      entity.kind === 'POLYLINE' ? [] : points(entity),
    );
    expect(corners).toEqual([
      [40, -500],
      [50, -500],
      [50, -510],
      [40, -510],
    ]);
    expect(window && numbersOf(window, 70)).toEqual([1]);
  });

  it('has true circles and lines', () => {
    const [hole] = on(entities(version), 'PINS');
    expect(hole?.kind).toBe('CIRCLE');
    expect(hole && [...points(hole), numbersOf(hole, 40)]).toEqual([[12, -514], [2.5]]);
    const [line] = on(entities(version), 'SLOT-CENTRELINE');
    expect(line?.kind).toBe('LINE');
    expect(line && [numbersOf(line, 10), numbersOf(line, 20), numbersOf(line, 11), numbersOf(line, 21)]).toEqual([
      [0],
      [-490],
      [0],
      [-540],
    ]);
  });

  it('has closed outlines with the bulges of their arcs, clockwise ones below 0', () => {
    const all = on(entities(version), 'SLOT').filter(({ kind }) => kind !== 'SEQEND');
    const [outline, ...vertices] = all;
    expect(outline && numbersOf(outline, 70)).toEqual([1]);
    const corners = version === 'R12' ? vertices : [outline];
    expect(corners.flatMap(points)).toEqual([
      [-18, -505],
      [22, -505],
      [22, -508],
      [-18, -508],
    ]);
    expect(corners.flatMap((corner) => (corner ? numbersOf(corner, 42) : []))).toEqual([0, -1, 0, -1]);
    const mirrored = ITEMS.map((item) => (item.kind === 'path' ? { ...item, path: mirrorPath(item.path) } : item));
    const bulges = on(entities(version, mirrored), 'SLOT').flatMap((entity) => numbersOf(entity, 42));
    expect(bulges).toEqual([0, 1, 0, 1]);
  });

  it('has its words as text: capitals at their height, midway about the place', () => {
    const [side] = on(entities(version), 'TEXT');
    expect(side?.kind).toBe('TEXT');
    // Capitals are 1493 of 2048 units of the font size of 3.2 tall.
    expect(side && [valuesOf(side, 1), numbersOf(side, 72), numbersOf(side, 73)]).toEqual([['TREBLE'], [1], [2]]);
    expect(side && numbersOf(side, 40)[0]).toBeCloseTo(2.3328125, 5);
    const [note] = on(entities(version), 'BOARD-TEXT');
    expect(note && numbersOf(note, 50)).toEqual([90]);
    expect(note && [numbersOf(note, 11), numbersOf(note, 21), numbersOf(note, 72)]).toEqual([[-45], [-510], [0]]);
  });

  it('is the same text each time', () => {
    expect(dxf(version)).toBe(dxf(version));
  });

  it('has the box of the drawing by another reader, the npm package dxf', () => {
    const drawn = ITEMS.filter(({ id }) => id === 'slot');
    const { min, max } = toPolylines(parseString(dxf(version, drawn))).bbox;
    // Half circles of 1.5 about x −18 and 22. That reader cuts arcs into chords of 5°, which may miss the outermost point
    // by 1.5·(1 − cos 2.5°) = 0.0014.
    for (const [found, wanted] of [
      [min.x, -19.5],
      [max.x, 23.5],
      [min.y, -508],
      [max.y, -505],
    ] as const)
      expect(Math.abs(found - wanted)).toBeLessThan(0.0015);
  });

  it('is refused when there is nothing to draw', () => {
    const made = makeDxf({ items: [] }, version);
    expect(made.ok ? '' : made.issues[0]?.code).toBe('drawing.empty');
  });
});

describe('curves', () => {
  it('are exact splines in 2007, meeting the lines and arcs end to end', () => {
    const [first, second, ...more] = on(entities('2007'), 'BRIDGE');
    expect(more).toEqual([]);
    const [spline, polyline] = first?.kind === 'SPLINE' ? [first, second] : [second, first];
    expect([spline?.kind, polyline?.kind]).toEqual(['SPLINE', 'LWPOLYLINE']);
    expect(points(spline)).toEqual([
      [30, -520],
      [20, -520],
      [12, -528],
      [0, -528],
      [-12, -528],
      [-20, -520],
      [-30, -520],
    ]);
    // Two cubics: each end of each as often as the degree, the ends of the whole once more.
    expect(spline && numbersOf(spline, 40)).toEqual([0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 2]);
    expect(spline && numbersOf(spline, 71)).toEqual([3]);
    expect(points(polyline)).toEqual([
      [-30, -520],
      [-35, -515],
      [-35, -505],
      [-30, -500],
      [30, -500],
      [35, -505],
      [35, -515],
      [30, -520],
    ]);
    const bulges = polyline ? numbersOf(polyline, 42) : [];
    const wanted = [-QUARTER, 0, -QUARTER, 0, -QUARTER, 0, -QUARTER, 0];
    expect(bulges).toHaveLength(wanted.length);
    for (const [index, bulge] of bulges.entries()) expect(bulge).toBeCloseTo(wanted[index] ?? Number.NaN, 9);
  });

  it('are arcs and lines in R12, within one closed outline', () => {
    const all = on(entities('R12'), 'BRIDGE');
    expect(new Set(kinds(all))).toEqual(new Set(['POLYLINE', 'VERTEX', 'SEQEND']));
    expect(all.filter(({ kind }) => kind === 'POLYLINE').map((outline) => numbersOf(outline, 70))).toEqual([[1]]);
    const every = kinds(entities('R12'));
    expect(every.filter((kind) => ['LWPOLYLINE', 'SPLINE', 'ELLIPSE'].includes(kind))).toEqual([]);
  });
});

describe('words of the drawing', () => {
  it('keep their signs in UTF-8 in 2007, but for those that begin a code', () => {
    const [note] = on(entities('2007'), 'BOARD-TEXT');
    expect(note && valuesOf(note, 1)).toEqual(['⌀ 5 ± 0.1, <3/16″> & 90° 100%%%%%% ^  Ω']);
  });

  it('are ASCII in R12: codes for what has one, numbers for the rest', () => {
    const [note] = on(entities('R12'), 'BOARD-TEXT');
    expect(note && valuesOf(note, 1)).toEqual(['%%c 5 %%p 0.1, <3/16"> & 90%%d 100%%%%%% ^  \\U+03A9']);
    expect(dxf('R12')).toMatch(/^[ -~\n]*$/);
  });
});
