import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { readReport } from './countReports.mjs';

/** @typedef {{ file: string, src?: string, isEntry?: boolean, imports?: string[], dynamicImports?: string[] }} Chunk */

/** Ceilings in KB (1000 bytes) after gzip. */
const ceilings = { firstPaint: 90, usableDrawing: 200, pdfChunk: 130 };

/** Sources whose chunks load once the drawing is up, on a maker's click or for what a maker has typed: it is usable without them. */
const loadedOnDemand = [
  'src/core/derive/deriveAreas',
  'src/exporters/',
  'src/importers/',
  'src/main/offline/',
  'src/main/autosave/',
  'src/persistence/',
  'src/store/makeAround',
  'src/canvas/picking/',
  'src/canvas/tools/',
  'src/ui/draw/',
  'src/ui/fields/HelpStrip',
  'src/ui/files/',
  'src/ui/import/',
  'src/ui/measure/',
  'src/ui/numbers/',
  'src/ui/place/',
  'src/ui/print/',
  'src/ui/record/',
  'src/workers/',
];

/** Only jsPDF writes this entry of a PDF: a script that holds these characters holds jsPDF. */
export const pdfMark = '/Producer (';

/**
 * The files that load before first paint (the entry and its static imports), or before the drawing is usable: those,
 * and every lazy chunk that they reach, other than the ones loaded on demand.
 * @param {Record<string, Chunk>} manifest
 * @param {boolean} withLazy
 * @returns {string[]}
 */
export const reachedFiles = (manifest, withLazy) => {
  const seen = new Set();
  /** @param {string} key */
  const visit = (key) => {
    const chunk = manifest[key];
    if (chunk === undefined || seen.has(key)) return;
    seen.add(key);
    const lazy = withLazy ? (chunk.dynamicImports ?? []) : [];
    for (const next of chunk.imports ?? []) visit(next);
    for (const next of lazy) if (!loadedOnDemand.some((folder) => next.startsWith(folder))) visit(next);
  };
  for (const [key, chunk] of Object.entries(manifest)) if (chunk.isEntry) visit(key);
  return [...seen].map((key) => manifest[key]?.file ?? '').filter((file) => file.endsWith('.js'));
};

/**
 * Measures the build and says whether each size keeps to its ceiling.
 * @param {string} root the project's folder
 * @returns {{ lines: string[], faults: string[] }}
 */
export const measureSize = (root) => {
  const dist = path.join(root, 'dist');
  const manifest = readReport(path.join(dist, '.vite/manifest.json'));
  if (manifest === undefined) return { lines: [], faults: ['there is no build to measure'] };

  const contents = (/** @type {string} */ file) => readFileSync(path.join(dist, file));
  const kilobytes = (/** @type {string[]} */ files) =>
    files.reduce((sum, file) => sum + gzipSync(contents(file)).length / 1000, 0);
  const scripts = readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.js'));
  const pdfChunks = scripts.filter((file) => contents(file).includes(pdfMark));

  const measured = [
    { what: 'JavaScript to first paint', files: reachedFiles(manifest, false), ceiling: ceilings.firstPaint },
    { what: 'JavaScript to a usable drawing', files: reachedFiles(manifest, true), ceiling: ceilings.usableDrawing },
    { what: 'PDF chunk', files: pdfChunks, ceiling: ceilings.pdfChunk },
  ];
  /** @type {string[]} */
  const faults = measured[0]?.files.length ? [] : ['the build has no entry'];
  const lines = measured.map(({ what, files, ceiling }) => {
    const size = kilobytes(files);
    const line = `${what}: ${size.toFixed(1)} KB gz in ${files.length} files, at most ${ceiling}`;
    if (size > ceiling) faults.push(line);
    return line;
  });
  return { lines, faults };
};
