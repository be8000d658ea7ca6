import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './runSteps.mjs';

/**
 * Tries the reader of SVG and DXF on every file of a folder: `npm run import:try -- FOLDER`. Prints what came of each, the
 * size of the outline offered first and the time; fails when one throws or takes longer than a maker is made to wait.
 */

const LONGEST_MS = 2000;

/** What a maker might answer, where a file leaves its size open. */
const answers = {
  dpi: { by: 'dpi', dpi: 96 },
  unit: { by: 'unit', unit: 'mm' },
  size: { by: 'length', longest: 150 },
};

const folder = process.argv[2];
if (folder === undefined) {
  console.error('Expected a folder: npm run import:try -- FOLDER');
  process.exit(2);
}

const { build } = await import('vite');
const out = path.join(root, 'reports/import-try');
await build({
  root,
  logLevel: 'warn',
  build: { ssr: path.join(root, 'src/importers/readOutlines.ts'), outDir: out, emptyOutDir: true },
});
const { readOutlines } = await import(pathToFileURL(path.join(out, 'readOutlines.js')).href);

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(svg|dxf)$/i.test(file))
  .sort();
let [faults, offered, listed, refused] = [0, 0, 0, 0];
for (const file of files) {
  const bytes = new Uint8Array(readFileSync(path.join(folder, file)));
  const start = performance.now();
  let outcome = '';
  try {
    const first = readOutlines(path.basename(file), bytes, { by: 'file' });
    /** @type {keyof typeof answers | null} */
    const needs = first.ok ? first.value.needs : null;
    const read = needs === null ? first : readOutlines(path.basename(file), bytes, answers[needs]);
    if (!read.ok) {
      refused += 1;
      outcome = `refused: ${read.issues[0].message}`;
    } else {
      const [best] = read.value.outlines;
      if (best.refusal === null) offered += 1;
      else listed += 1;
      const size = `${best.across.toFixed(3)} × ${best.along.toFixed(3)} mm`;
      const asked = needs === null ? '' : `asks for ${needs}; `;
      const left = read.value.leftOut.length === 0 ? '' : `; left out ${read.value.leftOut.join(', ')}`;
      outcome = `${asked}${read.value.outlines.length} found, ${size}${best.refusal === null ? '' : `: ${best.refusal}`}${left}`;
    }
  } catch (error) {
    faults += 1;
    outcome = `THREW ${error instanceof Error ? error.stack : error}`;
  }
  const took = performance.now() - start;
  if (took > LONGEST_MS) {
    faults += 1;
    outcome = `TOO SLOW; ${outcome}`;
  }
  console.log(`${file} (${took.toFixed(0)} ms): ${outcome}`);
}
console.log(
  `${files.length} files: ${offered} with an outline to take, ${listed} with paths that cannot be taken, ${refused} refused, ${faults} faults`,
);
process.exit(faults === 0 && files.length > 0 ? 0 : 1);
