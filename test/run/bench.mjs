import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { rmSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { findBrowser } from './findBrowser.mjs';
import { installPackages } from './installPackages.mjs';
import { root } from './runSteps.mjs';

/**
 * Measures every budget and prints the table. A measurement, not a test: the exit code says only whether it ran.
 */

const busy = (loadavg()[0] ?? 0).toFixed(1);
installPackages(root);
const { build, preview } = await import('vite');

const folder = path.join(root, 'reports/bench');
rmSync(folder, { recursive: true, force: true });

/** Keeps the address of a source file as it was before bundling: the measurements read files that lie beside it. */
const ownAddress = {
  name: 'own-address',
  /** @type {(code: string, id: string) => string | undefined} */
  transform: (code, id) =>
    code.includes('import.meta.url')
      ? code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href))
      : undefined,
};

const app = path.join(folder, 'app');
console.log('Building the app and the measurements ...');
await build({ root, logLevel: 'warn', build: { outDir: path.join(app, 'dist') } });
await build({
  root,
  logLevel: 'warn',
  plugins: [ownAddress],
  build: {
    ssr: fileURLToPath(import.meta.resolve('../bench/bench.ts')),
    outDir: folder,
    emptyOutDir: false,
    manifest: false,
    copyPublicDir: false,
  },
});

const browser = findBrowser();
const server = await preview({
  root,
  logLevel: 'warn',
  build: { outDir: path.join(app, 'dist') },
  preview: { host: '127.0.0.1', port: 0 },
});
try {
  const origin = server.resolvedUrls?.local[0] ?? '';
  console.log(`Measuring with ${browser}, about a minute; ${cpus().length} processors, load ${busy} before the start.`);
  console.log('Figures count only on a machine that does nothing else.');
  // A process of its own, which has compiled and collected nothing before it measures.
  const measuring = spawn(process.execPath, [path.join(folder, 'bench.js'), root, app, origin, browser], {
    stdio: 'inherit',
  });
  const [code] = await once(measuring, 'exit');
  process.exitCode = code ?? 1;
} finally {
  await server.close();
}
