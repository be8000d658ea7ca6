import { describe, expect, it } from 'vitest';
import type { Path, Point } from '../../../src/core/geom/types';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { readWithPdfium } from '../../readPdf/readWithPdfium';
import { readWithPdfjs } from '../../readPdf/readWithPdfjs';
import { readWithPdfLib } from '../../readPdf/readWithPdfLib';
import type { ReadPath } from '../../readPdf/types';
import { FONTS, handMadeSheet, lineThrough, pathItem } from './handMadeSheet';
import { unwrap } from './unwrap';

/** A micron, mm: how near the readers must come. */
const MICRON = 0.001;

const bytesOf = (...items: ReturnType<typeof pathItem>[]) =>
  unwrap(makePdf(handMadeSheet(210, 297, items), FONTS)).bytes;

const READERS = [
  { reader: 'pdfjs', read: async (bytes: Uint8Array) => (await readWithPdfjs(bytes)).pages },
  { reader: 'PDFium', read: readWithPdfium },
];

const SQUARE: readonly [Point, ...Point[]] = [
  { x: 50, y: 60 },
  { x: 150, y: 60 },
  { x: 150, y: 160 },
  { x: 50, y: 160 },
];

const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

describe.each(READERS)('read back by $reader', ({ read }) => {
  const pathsOf = async (...items: ReturnType<typeof pathItem>[]): Promise<readonly ReadPath[]> =>
    (await read(bytesOf(...items)))[0]?.paths ?? [];

  it('a square of 100 mm has its corners within a micron and closes', async () => {
    const [square, ...others] = await pathsOf(pathItem(lineThrough(SQUARE, true)));
    expect(others).toEqual([]);
    expect(square?.closed).toBe(true);
    for (const [index, corner] of SQUARE.entries()) {
      expect(distance(square?.points[index] ?? { x: Number.NaN, y: Number.NaN }, corner)).toBeLessThan(MICRON);
    }
  });

  it('a line of 0.0100 mm keeps its length within 0.0005', async () => {
    const [line] = await pathsOf(
      pathItem(
        lineThrough([
          { x: 100, y: 100 },
          { x: 100.01, y: 100 },
        ]),
      ),
    );
    const [start, end] = line?.points ?? [];
    expect(Math.abs((end?.x ?? Number.NaN) - (start?.x ?? Number.NaN) - 0.01)).toBeLessThan(0.0005);
  });

  // A quarter of a circle about (60, 200), radius 80: every point of every cubic lies that far from the centre.
  it('a quarter circle stays within a micron of its radius', async () => {
    const centre = { x: 60, y: 200 };
    const quarter: Path = {
      start: { x: 60, y: 120 },
      segments: [{ kind: 'arc', to: { x: 140, y: 200 }, centre, clockwise: true }],
      closed: false,
    };
    const [arc] = await pathsOf(pathItem(quarter));
    expect(arc?.segments.length).toBeGreaterThanOrEqual(3);
    let from = arc?.start ?? centre;
    for (const segment of arc?.segments ?? []) {
      if (segment.kind !== 'cubic') throw new Error('expected an arc as cubics');
      for (let t = 0; t <= 1; t += 1 / 64) {
        const weights = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
        const corners = [from, segment.c1, segment.c2, segment.to];
        const sum = (of: (point: Point) => number) =>
          corners.reduce((total, point, index) => total + (weights[index] ?? 0) * of(point), 0);
        const point = { x: sum(({ x }) => x), y: sum(({ y }) => y) };
        expect(Math.abs(distance(point, centre) - 80)).toBeLessThan(MICRON);
        expect(point.x).toBeGreaterThan(60 - MICRON);
        expect(point.y).toBeLessThan(200 + MICRON);
      }
      from = segment.to;
    }
    expect(distance(from, { x: 140, y: 200 })).toBeLessThan(MICRON);
  });

  // Line types by ISO 128, weights chosen for this sheet: outline 0.35 continuous; centreline 0.18,
  // long-dash-dot 7, 1.2, 0.8, 1.2; square line 0.7; window filled.
  it('roles keep their weights, dashes and fills', async () => {
    const line = lineThrough([
      { x: 10, y: 10 },
      { x: 90, y: 10 },
    ]);
    const square = lineThrough(SQUARE, true);
    const paths = await pathsOf(
      pathItem(line, 'outline'),
      pathItem(line, 'centreline'),
      pathItem(line, 'square-line'),
      pathItem(square, 'window'),
    );
    expect(paths.map(({ width }) => Number(width.toFixed(4)))).toEqual([0.35, 0.18, 0.7, 0.18]);
    expect(paths.map(({ dash }) => dash.map((length) => Number(length.toFixed(4))))).toEqual([
      [],
      [7, 1.2, 0.8, 1.2],
      [],
      [],
    ]);
    expect(paths.map(({ stroked }) => stroked)).toEqual([true, true, true, true]);
    expect(paths.map(({ filled }) => filled)).toEqual([false, false, false, true]);
  });

  it('a cubic keeps its handles', async () => {
    const path: Path = {
      start: { x: 10, y: 20 },
      segments: [{ kind: 'cubic', c1: { x: 30, y: 5 }, c2: { x: 60.1234, y: 44 }, to: { x: 80, y: 25 } }],
      closed: false,
    };
    const [curve] = await pathsOf(pathItem(path));
    const [segment] = curve?.segments ?? [];
    if (segment?.kind !== 'cubic') throw new Error('expected a cubic');
    expect(distance(segment.c1, { x: 30, y: 5 })).toBeLessThan(MICRON);
    expect(distance(segment.c2, { x: 60.1234, y: 44 })).toBeLessThan(MICRON);
    expect(distance(segment.to, { x: 80, y: 25 })).toBeLessThan(MICRON);
  });
});

describe('in the file itself', () => {
  // 100 mm = 283.464566929 pt by hand.
  it('a square of 100 mm measures 283.4645669 ± 0.0005 pt', async () => {
    const [page] = (await readWithPdfLib(bytesOf(pathItem(lineThrough(SQUARE, true))))).pages;
    const numbers = Array.from(page?.content.matchAll(/^([\d.]+) ([\d.]+) [ml]$/gmu) ?? [], ([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    const xs = numbers.map(([x = 0]) => x);
    const ys = numbers.map(([, y = 0]) => y);
    expect(numbers).toHaveLength(4);
    expect(Math.abs(Math.max(...xs) - Math.min(...xs) - 283.4645669)).toBeLessThan(0.0005);
    expect(Math.abs(Math.max(...ys) - Math.min(...ys) - 283.4645669)).toBeLessThan(0.0005);
  });

  it('no number has an exponent, however small or far', async () => {
    const far = lineThrough([
      { x: 1e-7, y: -1e-9 },
      { x: 99_999.5, y: -99_999.5 },
      { x: 1e-12, y: 297 },
    ]);
    const turned = { kind: 'text', id: 't', part: 'sheet', role: 'label', layer: 'text', anchor: 'start' } as const;
    const text = { ...turned, at: { x: 10, y: 10 }, text: 'H', height: 1e-7, angle: 1e-9 };
    const { bytes } = unwrap(makePdf(handMadeSheet(210, 297, [pathItem(far), text]), FONTS));
    const [page] = (await readWithPdfLib(bytes)).pages;
    expect(page?.content).toContain(' l\n');
    expect(page?.content).not.toMatch(/\d[eE][-+]?\d|NaN|Infinity/u);
  });
});
