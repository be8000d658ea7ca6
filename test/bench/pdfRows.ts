import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expandSet } from '../../src/core/sheets/sets/expandSet';
import type { SheetDocument } from '../../src/core/sheets/types';
import { makePdf } from '../../src/exporters/pdf/makePdf';
import { runSet } from '../../src/workers/runSet';
import { FONTS } from '../exporters/pdf/handMadeSheet';
import { unwrap } from '../exporters/pdf/unwrap';
import { layTemplate } from '../readback/makeTemplate';
import { readWithPdfium } from '../readPdf/readWithPdfium';
import { readWithPdfjs } from '../readPdf/readWithPdfjs';
import { readWithPdfLib } from '../readPdf/readWithPdfLib';
import { INSTRUMENTS } from './instruments';
import { pageSvg } from './pageSvg';
import { pageDeviation, rawPaths } from './pdfDeviation';
import { notMeasured, type Row, row } from './row';
import { percentile, timed, timedRuns } from './statistics';

const CONVERTER = 'rsvg-convert';
const RUNS = 15;
const MICRONS_PER_MM = 1000;

/** librsvg with the printed font and no other, so that both files carry the same one. */
const fontSettings = (fonts: string, cache: string): string =>
  `<?xml version="1.0"?><fontconfig><dir>${fonts}</dir><cachedir>${cache}</cachedir></fontconfig>\n`;

/** The same pages converted by librsvg: time of the whole program, time of an empty page, bytes. Null without librsvg. */
function librsvg(sheet: SheetDocument, root: string) {
  const folder = path.join(root, 'reports/bench/librsvg');
  mkdirSync(folder, { recursive: true });
  const inFolder = (name: string) => path.join(folder, name);
  writeFileSync(inFolder('fonts.conf'), fontSettings(path.join(root, 'public/fonts'), inFolder('cache')));
  const write = (name: string, svg: string) => {
    writeFileSync(inFolder(name), svg);
    return inFolder(name);
  };
  const pages = sheet.pages.map((page, index) => write(`page-${index + 1}.svg`, pageSvg(page)));
  const [first] = sheet.pages;
  if (first === undefined) throw new Error('the template has no page');
  const empty = write('empty.svg', pageSvg({ ...first, items: [] }));
  const env = { ...process.env, FONTCONFIG_FILE: inFolder('fonts.conf') };
  const convert = (files: readonly string[]): void => {
    const { status } = spawnSync(CONVERTER, ['-f', 'pdf', '-o', inFolder('page.pdf'), ...files], { env });
    if (status !== 0) throw new Error(`${CONVERTER} could not read the page`);
  };
  if (spawnSync(CONVERTER, ['--version']).error) return null;
  // The first run of each fills the cache of fonts.
  const emptyTimes = timedRuns(RUNS, () => convert([empty]));
  const times = timedRuns(RUNS, () => convert(pages));
  return {
    time: percentile(times, 0.5),
    start: percentile(emptyTimes, 0.5),
    size: readFileSync(inFolder('page.pdf')).length,
  };
}

function speedRows(root: string): readonly Row[] {
  const [steel] = INSTRUMENTS;
  if (steel === undefined) throw new Error('there is no instrument to draw');
  const sheet = unwrap(layTemplate(steel, 'a4', 'mm'));
  let bytes = new Uint8Array();
  const make = () => {
    bytes = new Uint8Array(unwrap(makePdf(sheet, FONTS)).bytes);
  };
  const first = timed(make);
  const warm = percentile(timedRuns(2 * RUNS, make).slice(RUNS), 0.5);
  const node = row('makePdf alone in Node, warm / first', 'ms', [warm, first], [], `${bytes.length} bytes`);
  const other = librsvg(sheet, root);
  const what = 'template PDF against librsvg';
  if (other === null) return [node, notMeasured(what, 'rsvg-convert missing')];
  const net = warm / (other.time - other.start);
  const timeNote = `librsvg ${other.time.toFixed(1)} ms, of it ${other.start.toFixed(1)} for an empty page; without that ${net.toFixed(2)}x`;
  return [
    node,
    row(`${what}: time`, 'x', [warm / other.time], [0.2], timeNote),
    row(`${what}: size`, 'x', [bytes.length / other.size], [1], `librsvg ${other.size} bytes`),
  ];
}

/** Each instrument on each paper: how far what was printed lies from the display list. */
async function deviationRows(): Promise<readonly Row[]> {
  const largest = { file: 0, pdfjs: 0, pdfium: 0 };
  let count = 0;
  for (const project of INSTRUMENTS) {
    for (const paper of ['a4', 'letter']) {
      const sheet = unwrap(layTemplate(project, paper, paper === 'a4' ? 'mm' : 'in'));
      const { bytes } = unwrap(makePdf(sheet, FONTS));
      const [raw, pdfjs, pdfium] = [
        (await readWithPdfLib(bytes)).pages,
        (await readWithPdfjs(bytes)).pages,
        await readWithPdfium(bytes),
      ];
      for (const [index, page] of sheet.pages.entries()) {
        const rawPage = raw[index];
        largest.file = Math.max(largest.file, pageDeviation(page, rawPage ? rawPaths(rawPage) : []));
        largest.pdfjs = Math.max(largest.pdfjs, pageDeviation(page, pdfjs[index]?.paths ?? []));
        largest.pdfium = Math.max(largest.pdfium, pageDeviation(page, pdfium[index]?.paths ?? []));
      }
      count += 1;
    }
  }
  const note = `largest of ${count} templates, every point and handle and along the curves`;
  return [
    row('PDF against the model, in the file', 'µm', [largest.file * MICRONS_PER_MM], [0.1], note),
    row(
      'PDF against the model, read by pdfjs / PDFium',
      'µm',
      [largest.pdfjs * MICRONS_PER_MM, largest.pdfium * MICRONS_PER_MM],
      [1, 1],
    ),
  ];
}

const MOST_SET_MS = 5000;

/** A hundred templates in one go: both hands at fifty scales. */
async function setRows(): Promise<readonly Row[]> {
  const [steel] = INSTRUMENTS;
  if (steel === undefined) throw new Error('there is no instrument to draw');
  const style = { unit: 'mm', decimals: 1 } as const;
  const scales = Array.from({ length: 50 }, (_, index) => 600 + 2 * index);
  const members = unwrap(expandSet({ models: [steel], hands: 'both', scales }, style));
  const paper = { id: 'a4', name: 'A4', width: 210, height: 297 };
  const job = { members, chosen: ['tape-down'], paper, profile: null, style, date: '2026-11-25' } as const;
  const times: number[] = [];
  for (const as of ['pdf', 'zip'] as const) {
    const start = performance.now();
    unwrap(
      await runSet(
        { ...job, as },
        async (document) => makePdf(document, FONTS),
        () => {},
      ),
    );
    times.push(performance.now() - start);
  }
  return [row('set of 100 templates in Node, one PDF / zip', 'ms', times, [MOST_SET_MS, MOST_SET_MS])];
}

const EXPORTS = 300;
const BYTES_IN_MB = 1e6;

/** What is still held after many exports, beyond what was held after the first few. */
function memoryRow(): Row {
  const [steel] = INSTRUMENTS;
  if (steel === undefined) throw new Error('there is no instrument to draw');
  setFlagsFromString('--expose-gc');
  const collect: unknown = runInNewContext('gc');
  if (typeof collect !== 'function') throw new Error('expected Node to collect on request');
  const held = (times: number): number => {
    for (let time = 0; time < times; time += 1)
      unwrap(makePdf(unwrap(layTemplate(steel, time % 2 === 0 ? 'a4' : 'letter', 'mm')), FONTS));
    collect();
    return process.memoryUsage().heapUsed / BYTES_IN_MB;
  };
  const before = held(EXPORTS / 10);
  return row(
    `memory held by ${EXPORTS} more exports`,
    'MB',
    [held(EXPORTS) - before],
    [1],
    'heap, collected before each',
  );
}

/** What the PDF takes beside another program that makes one of the same drawing, and how true its lines are. */
export const pdfRows = async (root: string): Promise<readonly Row[]> => [
  ...speedRows(root),
  ...(await setRows()),
  memoryRow(),
  ...(await deviationRows()),
];
