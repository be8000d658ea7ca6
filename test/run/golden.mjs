import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildGolden } from '../exporters/golden/buildGolden.mjs';
import { root } from './runSteps.mjs';

/** Writes the golden files anew: `npm run golden`. Nothing else changes them; look at what it changed before it is kept. */

const script = await buildGolden(path.join(root, 'reports/golden'));
const { goldenFiles } = await import(pathToFileURL(script).href);
const folder = path.join(root, 'test/golden');
mkdirSync(folder, { recursive: true });
for (const [name, text] of Object.entries(await goldenFiles())) {
  writeFileSync(path.join(folder, name), text);
  console.log(`test/golden/${name}: ${Buffer.byteLength(text)} bytes`);
}
