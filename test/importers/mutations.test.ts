import { describe, expect, it } from 'vitest';
import { validatePath } from '../../src/core/geom/validatePath';
import { seededRandom } from '../../src/core/numeric/seededRandom';
import { readOutlines } from '../../src/importers/readOutlines';
import { block, dxf, entity, polyline } from './dxfText';

const SVG = `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY w "150">]>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="200mm" height="100mm" viewBox="0 0 200 100">
<style>.off{display:none}</style><defs><symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="4"/></symbol></defs>
<g transform="translate(3 4) rotate(12 5 6) scale(1.5,0.5)"><path d="M0 0C10-20 140-20 150 0A15 15 0 0 1 150 30Q75 60 0 30T0 0Z"/>
<rect x="1" y="2" width="&w;" height="30" rx="4"/><polygon points="0,0 100,0 100,30"/></g>
<ellipse cx="50" cy="40" rx="30" ry="10" class="off"/><use xlink:href="#s" x="4" width="50" height="50"/></svg>`;

const spline = entity(
  'SPLINE',
  [70, 4],
  [71, 3],
  [72, 8],
  [73, 4],
  ...[0, 0, 0, 0, 1, 1, 1, 1].map((knot) => [40, knot] as const),
  ...[1, 2, 2, 1].map((weight) => [41, weight] as const),
  ...[0, 50, 100, 150].flatMap((x) => [[10, x] as const, [20, x % 100] as const]),
);
const DXF = dxf(
  [
    polyline(true, [0, 0, 0.4], [150, 0], [150, 30, -0.2], [0, 30]),
    entity('ELLIPSE', [10, 5], [20, 6], [11, 60], [21, 20], [40, 0.4], [41, 0], [42, 6.2]),
    entity('ARC', [10, 5], [20, 6], [40, 60], [50, 20], [51, 300]),
    entity('INSERT', [2, 'A'], [10, 5], [20, 6], [41, 2], [42, -1], [50, 20], [70, 2], [71, 2], [44, 30], [45, 30]),
    spline,
  ],
  {
    blocks: block(
      'A',
      1,
      2,
      entity('CIRCLE', [10, 5], [20, 6], [40, 20]),
      entity('LINE', [10, 0], [20, 0], [11, 9], [21, 9]),
    ),
  },
);

/** What is put where something was taken out. */
const SCRAPS = [
  '',
  '0',
  '-',
  '1e999',
  'NaN',
  '99999999999',
  '<',
  '>',
  '"',
  '&',
  '&w;',
  '\n',
  '0\nSECTION\n',
  '\0',
  'é',
  '<g>',
  ' ',
  '-1e-300',
];

/** A file with one to four pieces cut out, doubled or put in somewhere. */
const mutated = (file: string, random: () => number): string => {
  const below = (count: number): number => Math.floor(random() * count);
  let text = file;
  for (let changes = 1 + below(4); changes > 0; changes--) {
    const at = below(text.length);
    const cut = below(3) === 0 ? below(40) : below(3);
    const scrap = SCRAPS[below(SCRAPS.length)] ?? '';
    const copy = below(8) === 0 ? text.slice(at, at + below(300)) : '';
    text = text.slice(0, at) + scrap + copy + text.slice(at + cut);
  }
  return text;
};

describe('mutated files', () => {
  it.each([
    ['SVG', SVG, 101],
    ['DXF', DXF, 202],
  ])('200 of %s: a message, or outlines whose numbers are sound', (_, file, seed) => {
    expect(readOutlines('whole', file, { by: 'file' }).ok).toBe(true);
    const { uniform } = seededRandom(seed);
    let refused = 0;
    for (let trial = 0; trial < 200; trial++) {
      const text = mutated(file, uniform);
      const result = readOutlines('mutated', text, trial % 2 === 0 ? { by: 'file' } : { by: 'length', longest: 150 });
      if (!result.ok) {
        refused += 1;
        expect(result.issues[0]?.message, text).toMatch(/^.{20,}\.$/s);
        continue;
      }
      for (const { path, across, along, area, refusal } of result.value.outlines) {
        expect(validatePath(path).ok, text).toBe(true);
        expect(
          [across, along, area].every((size) => Number.isFinite(size) && size >= 0),
          text,
        ).toBe(true);
        if (refusal === null) expect(path.closed, text).toBe(true);
      }
    }
    expect(refused).toBeGreaterThan(20);
    expect(refused).toBeLessThan(180);
  });
});
