import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { validatePath } from '../../../src/core/geom/validatePath';
import { demoProject } from '../../../src/core/kinds/demo';
import type { DrawingScale, FoundOutline, ImportedOutlines } from '../../../src/core/ports';
import { readOutlines } from '../../../src/importers/readOutlines';
import { takeOutline } from '../../../src/store/commands/takeOutline';
import { block, dxf, entity, polyline } from '../../importers/dxfText';
import { dice } from '../../store/random/dice';
import { wrongProject } from './fuzzProjects';
import { type FuzzRun, fuzzRun } from './fuzzRun';
import { damagedNumbers, damagedText } from './fuzzText';

const golden = (name: string): string => readFileSync(new URL(`../../golden/${name}`, import.meta.url), 'utf8');
const iconFolder = path.join(path.dirname(fileURLToPath(import.meta.resolve('@mdi/svg/package.json'))), 'svg');
/** Every 300th icon of the set. */
const icons = (): readonly string[] =>
  readdirSync(iconFolder)
    .sort()
    .filter((_, index) => index % 300 === 0)
    .map((file) => readFileSync(path.join(iconFolder, file), 'utf8').replace('viewBox', 'width="90mm" viewBox'));

const BUSY = `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY w "150">]>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="200mm" height="100mm" viewBox="0 0 200 100">
<style>.off{display:none}</style><defs><symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="4"/></symbol></defs>
<g transform="translate(3 4) rotate(12 5 6) scale(1.5,0.5)"><path d="M0 0C10-20 140-20 150 0A15 15 0 0 1 150 30Q75 60 0 30T0 0Z"/>
<rect x="1" y="2" width="&w;" height="30" rx="4"/><polygon points="0,0 100,0 100,30"/></g><polyline points="0 0 9 9 9 50%"/>
<ellipse cx="50" cy="40" rx="30" ry="10" class="off"/><use xlink:href="#s" x="4" width="50" height="50"/></svg>`;

const PIXELS = `<svg xmlns="http://www.w3.org/2000/svg" width="600px" height="200px" viewBox="0 0 600 200">
<rect x="20" y="20" width="531.496" height="106.299"/><circle cx="40" cy="160" r="9"/><path d="M0 0H400V90M0 0V90H400"/></svg>`;

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
const disc = block(
  'A',
  1,
  2,
  entity('CIRCLE', [10, 5], [20, 6], [40, 20]),
  entity('LINE', [10, 0], [20, 0], [11, 9], [21, 9]),
);
const BUSY_DXF = dxf(
  [
    polyline(true, [0, 0, 0.4], [150, 0], [150, 30, -0.2], [0, 30]),
    entity('ELLIPSE', [10, 5], [20, 6], [11, 60], [21, 20], [40, 0.4], [41, 0], [42, 6.2]),
    entity('ARC', [10, 5], [20, 6], [40, 60], [50, 20], [51, 300]),
    entity('INSERT', [2, 'A'], [10, 5], [20, 6], [41, 2], [42, -1], [50, 20], [70, 2], [71, 2], [44, 30], [45, 30]),
    spline,
  ],
  { blocks: disc },
);
const PLAIN_DXF = dxf([polyline(true, [0, 0], [6, 0, 0.2], [6, 1.2], [0, 1.2])], { units: 1 });

const SCALES: readonly DrawingScale[] = [
  { by: 'file' },
  { by: 'length', longest: 150 },
  { by: 'dpi', dpi: 90 },
  { by: 'unit', unit: 'in' },
];

const start = demoProject('fuzz', '2026-03-01T09:00:00.000Z');

const wrongOutline = ({ path: found, across, along, area, refusal }: FoundOutline): string | null => {
  if (!validatePath(found).ok) return 'an outline that is no sound path';
  if (![across, along, area].every((size) => Number.isFinite(size) && size >= 0)) return 'an outline without a size';
  if (refusal !== null) return refusal === '' ? 'an outline refused without a reason' : null;
  const taken = takeOutline(start, found);
  return taken.ok ? wrongProject(taken.value) : `an outline that can be taken is not: ${taken.issues[0]?.message}`;
};

const wrongDrawing = ({ outlines }: ImportedOutlines): string | null => {
  for (const outline of outlines) {
    const wrong = wrongOutline(outline);
    if (wrong !== null) return wrong;
  }
  return null;
};

/** Damaged SVG or DXF files, half of them in their numbers alone, read as the import does it. */
export const fuzzDrawings = (
  kind: 'svg' | 'dxf',
  count: number,
  seed: number,
  begin?: (number: number) => void,
): FuzzRun => {
  const samples =
    kind === 'svg'
      ? [golden('demo.svg'), BUSY, PIXELS, ...icons()]
      : [golden('demo-2007.dxf'), golden('demo-R12.dxf'), BUSY_DXF, PLAIN_DXF, BUSY_DXF, PLAIN_DXF];
  const file = (number: number): string => {
    const chance = dice(seed + number);
    const sample = chance.of(samples) ?? '';
    return number % 2 === 0 ? damagedText(sample, chance.of(samples) ?? '', chance) : damagedNumbers(sample, chance);
  };
  return fuzzRun(
    count,
    file,
    (text, number) => readOutlines(`fuzz.${kind}`, text, SCALES[(number >> 1) % SCALES.length] ?? { by: 'file' }),
    wrongDrawing,
    begin,
  );
};
