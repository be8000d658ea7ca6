import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { distanceToPath } from '../../src/core/geom/distanceToPath';
import { pathBounds } from '../../src/core/geom/pathBounds';
import type { FoundOutline, ImportedOutlines } from '../../src/core/ports';
import { readOutlines } from '../../src/importers/readOutlines';

interface Case {
  readonly file: string;
  /** mm, by ezdxf's own boxes of what is seen. */
  readonly across: number;
  readonly along: number;
  /** Whether the file says its unit. */
  readonly told: boolean;
  /** Whether all outlines together are meant, not the one offered first. */
  readonly all: boolean;
  /** On the curves, mm, y up. */
  readonly points: readonly (readonly [x: number, y: number])[];
}

const script = fileURLToPath(new URL('import_by_ezdxf.py', import.meta.url));

/** What the maker is promised, mm. */
const NEAR = 0.01;

/** What a curve may stray that has to be approximated, mm: 5e-6 of 150 mm, and rounding. */
const STRAY = 0.001;

const folder = mkdtempSync(path.join(tmpdir(), 'saddlemark-import-'));
let cases: readonly Case[] = [];

const read = (file: string, by: 'file' | 'mm'): ImportedOutlines => {
  const bytes = new Uint8Array(readFileSync(path.join(folder, file)));
  const result = readOutlines(file, bytes, by === 'file' ? { by } : { by: 'unit', unit: by });
  if (!result.ok) throw new Error(`${file}: ${result.issues[0]?.message}`);
  return result.value;
};

const sizeOf = (outlines: readonly FoundOutline[]): [number, number] => {
  const boxes = outlines.map((outline) => pathBounds(outline.path));
  const most = (pick: (box: (typeof boxes)[number]) => number): number => Math.max(...boxes.map(pick));
  return [most((box) => box.maxX) + most((box) => -box.minX), most((box) => box.maxY) + most((box) => -box.minY)];
};

beforeAll(() => {
  const answer = execFileSync('/usr/bin/python3', [script, folder], { encoding: 'utf8', maxBuffer: 64e6 });
  cases = JSON.parse(answer);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('DXF files that ezdxf writes', () => {
  it('are many, of every version and unit', () => {
    expect(cases.length).toBeGreaterThan(150);
    expect(cases.filter(({ file }) => file.startsWith('belly-R2010'))).toHaveLength(22);
  });

  it('have the size that ezdxf gives them, and can be taken', () => {
    const wrong = cases.flatMap(({ file, across, along, told, all }) => {
      const asked = read(file, 'file');
      const found = told ? asked : read(file, 'mm');
      const [first] = found.outlines;
      const [wide, high] = sizeOf(all ? found.outlines : found.outlines.slice(0, 1));
      const off = Math.max(Math.abs(wide - across), Math.abs(high - along));
      const sound = (asked.needs === null) === told && found.needs === null && first?.refusal === null;
      return sound && off < NEAR ? [] : [`${file}: ${wide} × ${high} for ${across} × ${along}; ${first?.refusal}`];
    });
    expect(wrong).toEqual([]);
  });

  it('have curves that pass through the points that ezdxf puts on them', () => {
    const curved = cases.filter(({ points, all }) => points.length > 0 && !all);
    expect(curved.length).toBeGreaterThan(60);
    const strays = curved.flatMap(({ file, points }) => {
      const [first] = read(file, 'file').outlines;
      if (first === undefined) return [`${file}: nothing found`];
      const most = Math.max(...points.map(([x, y]) => distanceToPath(first.path, { x, y: -y })));
      return most < STRAY ? [] : [`${file}: ${most} mm off`];
    });
    expect(strays).toEqual([]);
  });

  it('keep true arcs, and turn y down', () => {
    const [belly] = read('belly-R2018-4.dxf', 'file').outlines;
    expect(belly?.path.segments.map(({ kind }) => kind)).toEqual(['line', 'arc', 'line', 'arc', 'line', 'arc']);
    // Drawn with its long straight edge at y = 0 and the belly above it: on the page the straight edge lies lowest.
    const { maxY = Number.NaN } = belly ? pathBounds(belly.path) : {};
    expect(maxY).toBeCloseTo(0, 9);
  });
});
