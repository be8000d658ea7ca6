import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Item, PathItem } from '../../src/core/drawing/types';
import { distanceToPath } from '../../src/core/geom/distanceToPath';
import type { Point } from '../../src/core/geom/types';
import { drawingsForReaders, dxfOf } from './filesForReaders';
import { temporaryFolder } from './temporaryFolder';

interface ReadEntity {
  readonly kind: string;
  readonly layer: string;
  readonly points?: readonly (readonly [number, number])[];
  readonly radius?: number;
  readonly corners?: readonly (readonly [number, number, number])[];
  readonly closed?: boolean;
  readonly arcs?: readonly (readonly [number, number, number, number])[];
  readonly degree?: number;
  readonly knots?: readonly number[];
  readonly along?: readonly (readonly [number, number])[];
  readonly text?: string;
  readonly height?: number;
  readonly rotation?: number;
  readonly halign?: number;
  readonly valign?: number;
}

interface ReadDxf {
  readonly version: string;
  readonly units: number;
  readonly metric: number | null;
  readonly faults: readonly string[];
  readonly layers: Readonly<Record<string, string>>;
  readonly lineTypes: readonly string[];
  readonly entities: readonly ReadEntity[];
}

const script = fileURLToPath(new URL('dxf_by_ezdxf.py', import.meta.url));
const VERSIONS = ['2007', 'R12'] as const;
/** A micron, mm. */
const MICRON = 0.001;
/** What R12's arcs may stray from a curve, mm. */
const PROMISED = 0.005;

const { fileNamed } = temporaryFolder();
let drawings: Readonly<Record<string, readonly Item[]>> = {};
const read: Record<string, ReadDxf> = {};

beforeAll(async () => {
  drawings = await drawingsForReaders();
  const names = Object.keys(drawings).flatMap((name) => VERSIONS.map((version) => `${name}.${version}`));
  for (const name of names) {
    const [drawing = '', version] = name.split('.');
    writeFileSync(fileNamed(`${name}.dxf`), dxfOf(drawings[drawing] ?? [], version === 'R12' ? 'R12' : '2007'));
  }
  const files = names.map((name) => fileNamed(`${name}.dxf`));
  const answer: Record<string, ReadDxf> = JSON.parse(
    execFileSync('/usr/bin/python3', [script, ...files], { encoding: 'utf8', maxBuffer: 64e6 }),
  );
  for (const [index, name] of names.entries()) read[name] = answer[files[index] ?? ''] as ReadDxf;
}, 120_000);

const of = (name: string): ReadDxf => {
  const found = read[name];
  if (found === undefined) throw new Error(`${name} was not read`);
  return found;
};
const on = (name: string, layer: string): readonly ReadEntity[] =>
  of(name).entities.filter((entity) => entity.layer === layer);

describe.each(VERSIONS)('ezdxf reads a DXF of %s', (version) => {
  it('without a fault, in millimetres', () => {
    for (const [name, { version: found, units, metric, faults }] of Object.entries(read)) {
      if (!name.endsWith(version)) continue;
      expect([name, found, units, metric, faults]).toEqual([name, version === 'R12' ? 'AC1009' : 'AC1021', 4, 1, []]);
    }
  });

  it('with the kinds of entities that this release has, on layers whose line types are there', () => {
    const kinds = new Set(
      Object.entries(read).flatMap(([name, file]) =>
        name.endsWith(version) ? file.entities.map(({ kind }) => kind) : [],
      ),
    );
    const polyline = version === 'R12' ? ['POLYLINE'] : ['LWPOLYLINE', 'SPLINE'];
    expect([...kinds].sort()).toEqual(['CIRCLE', 'LINE', ...polyline, 'TEXT'].sort());
    for (const [name, { layers, lineTypes, entities }] of Object.entries(read)) {
      if (!name.endsWith(version)) continue;
      for (const { layer } of entities) expect(Object.keys(layers)).toContain(layer);
      const known = lineTypes.map((type) => type.toUpperCase());
      for (const type of Object.values(layers)) expect(known).toContain(type.toUpperCase());
    }
    expect(of(`demo-right.${version}`).layers['SLOT-CENTRELINE']).toBe('ISO_128_04');
    expect(of(`demo-right.${version}`).layers.BOARD).toBe('ISO_128_05');
  });

  // The drawing made up by hand, y up.
  it('with arcs where there are arcs: centre, radius and turn', () => {
    const [slot] = on(`hand.${version}`, 'SLOT');
    expect(slot?.closed).toBe(true);
    const arcs = slot?.arcs ?? [];
    const wanted = [
      [22, -506.5, 1.5, 180],
      [-18, -506.5, 1.5, 180],
    ];
    expect(arcs).toHaveLength(wanted.length);
    for (const [index, arc] of arcs.entries())
      for (const [k, value] of arc.entries())
        expect(Math.abs(value - (wanted[index]?.[k] ?? Number.NaN))).toBeLessThan(MICRON);
    const rounded = on(`hand.${version}`, 'BRIDGE').flatMap((entity) => entity.arcs ?? []);
    for (const [x, y] of [
      [30, -505],
      [30, -515],
      [-30, -515],
      [-30, -505],
    ] as const) {
      const near = rounded.filter((arc) => Math.hypot(arc[0] - x, arc[1] - y) < MICRON);
      expect(near).toHaveLength(1);
      expect(Math.abs((near[0]?.[2] ?? 0) - 5)).toBeLessThan(MICRON);
      expect(Math.abs((near[0]?.[3] ?? 0) - 90)).toBeLessThan(0.001);
    }
    const [hole] = on(`hand.${version}`, 'PINS');
    expect([hole?.kind, hole?.points, hole?.radius]).toEqual(['CIRCLE', [[12, -514]], 2.5]);
  });

  it('with its words, upright and where they belong', () => {
    const [side] = on(`hand.${version}`, 'TEXT');
    expect(side).toMatchObject({ text: 'TREBLE', points: [[35, -495]], halign: 1, valign: 2, rotation: 0 });
    expect(on(`hand.${version}`, 'BOARD-TEXT')[0]).toMatchObject({ rotation: 90, points: [[-45, -510]] });
  });

  it('with every outline and hole where the drawing has it, both hands', () => {
    for (const [name, items] of Object.entries(drawings)) {
      const { entities } = of(`${name}.${version}`);
      const lines = items.filter((item): item is PathItem => item.kind === 'path');
      const places = entities.flatMap(({ kind, points = [], corners = [], along = [], radius = 0 }) => {
        // The control points of a curve do not lie on it, nor does the centre of a circle.
        if (kind === 'TEXT') return [];
        if (kind === 'SPLINE') return along;
        if (kind === 'CIRCLE') return points.map(([x, y]): readonly [number, number] => [x + radius, y]);
        return [...points, ...corners.map(([x, y]): readonly [number, number] => [x, y])];
      });
      expect(places.length).toBeGreaterThan(20);
      const most = name === 'hand' && version === 'R12' ? PROMISED : MICRON;
      const stray = places.filter(([x, y]) => {
        const point: Point = { x, y: -y };
        return Math.min(...lines.map(({ path }) => distanceToPath(path, point))) > most;
      });
      expect([name, stray]).toEqual([name, []]);
    }
  });
});

it('ezdxf has the curves of 2007 as the cubics that they are', () => {
  const splines = on('hand.2007', 'BRIDGE').filter(({ kind }) => kind === 'SPLINE');
  expect(splines).toHaveLength(1);
  expect(splines[0]?.degree).toBe(3);
  expect(splines[0]?.knots).toEqual([0, 0, 0, 0, 1, 1, 1, 2, 2, 2, 2]);
  // At the middle of the first cubic, (30 + 3·20 + 3·12 + 0)/8 = 15.75 and (520 + 3·520 + 3·528 + 528)/8 = 524.
  const middle = { x: 15.75, y: -524 };
  const along = splines[0]?.along ?? [];
  expect(Math.min(...along.map(([x, y]) => Math.hypot(x - middle.x, y - middle.y)))).toBeLessThan(MICRON);
});
