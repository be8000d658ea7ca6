import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { root } from '../runSteps.mjs';

/** Damaged files for each reader. */
const COUNT = 10_000;

/** A file that takes longer than this, ms, is taken for one that never ends. */
const NEVER_ENDS = 20_000;

/** Readers with the seed of their files: file n of seed s is the same each time. */
const READERS = /** @type {const} */ ([
  ['svg', 11],
  ['dxf', 22],
  ['project', 33],
  ['library', 44],
]);

/** Keeps the address of a source file as it was before bundling: samples lie beside it. */
const ownAddress = {
  name: 'own-address',
  /** @type {(code: string, id: string) => string | undefined} */
  transform: (code, id) =>
    code.includes('import.meta.url')
      ? code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href))
      : undefined,
};

/**
 * One reader in a worker of its own, which is ended when a file never ends.
 * @param {string} file
 * @param {string} kind
 * @param {number} seed
 * @returns {Promise<import('./fuzzRun').FuzzRun>}
 */
const runReader = (file, kind, seed) =>
  new Promise((resolve, reject) => {
    const at = new SharedArrayBuffer(4);
    const place = new Int32Array(at);
    const worker = new Worker(file, { workerData: { kind, count: COUNT, seed, at } });
    let [last, since] = [-1, performance.now()];
    const clock = setInterval(() => {
      const now = Atomics.load(place, 0);
      if (now !== last) [last, since] = [now, performance.now()];
      else if (performance.now() - since > NEVER_ENDS) {
        const faults = [`${now}: does not end; the files after it were not tried`];
        resolve({ taken: 0, refused: 0, faults, slowest: { file: now, ms: NEVER_ENDS } });
        worker.terminate();
      }
    }, 500);
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', () => clearInterval(clock));
  });

/** @type {Promise<string> | undefined} */
let built;
/** The worker as one file that Node runs. */
const buildWorker = async () => {
  const { build } = await import('vite');
  const out = path.join(root, 'reports/torture');
  await build({
    root,
    logLevel: 'error',
    plugins: [ownAddress],
    build: {
      ssr: fileURLToPath(import.meta.resolve('./fuzzWorker.ts')),
      outDir: out,
      emptyOutDir: true,
      copyPublicDir: false,
    },
  });
  return path.join(out, 'fuzzWorker.js');
};

/**
 * Damaged files handed to every reader of what comes from outside; a file with which all was well counts as passed.
 * @type {import('../runSteps.mjs').Step[]}
 */
export const fuzzSteps = READERS.map(([kind, seed]) => ({
  name: `fuzz ${kind}`,
  run: async () => {
    built ??= buildWorker();
    const { taken, refused, faults, slowest } = await runReader(await built, kind, seed);
    const most = `slowest ${slowest.ms.toFixed(0)} ms (file ${slowest.file} of seed ${seed})`;
    console.log(`${kind}: ${taken} taken, ${refused} refused; ${most}`);
    return { passed: taken + refused - faults.length, failed: faults.length, faults: faults.slice(0, 20) };
  },
}));
