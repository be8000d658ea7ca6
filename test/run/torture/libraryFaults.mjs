import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from '../runSteps.mjs';

/** @typedef {typeof import('../../../src/persistence/library/keptText')} KeptTexts */

/** @type {Promise<KeptTexts> | undefined} */
let built;
/**
 * The app's own reader of kept texts, as one file that Node runs.
 * @returns {Promise<KeptTexts>}
 */
const buildReader = async () => {
  const { build } = await import('vite');
  const outDir = path.join(root, 'reports/torture-reader');
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: path.join(root, 'src/persistence/library/keptText.ts'),
      outDir,
      emptyOutDir: true,
      copyPublicDir: false,
    },
  });
  return import(pathToFileURL(path.join(outDir, 'keptText.js')).href);
};

/**
 * What is wrong with a library as it lies in the database: something listed that is not there or there and not listed, a
 * text that is not as it was written, or one that is no project.
 * @param {import('./keptInPage.mjs').Kept} kept
 * @returns {Promise<{ read: number, faults: readonly string[] }>} read: how many texts were good
 */
export const libraryFaults = async ({ entries, projects, versions, versionTexts }) => {
  built ??= buildReader();
  const { readKept } = await built;
  /** @type {string[]} */
  const faults = [];
  let read = 0;
  for (const [what, listed, texts] of /** @type {const} */ ([
    ['project', entries, projects],
    ['earlier state', versions, versionTexts],
  ])) {
    for (const id of Object.keys(texts)) if (!listed.includes(id)) faults.push(`${what} ${id} is there and not listed`);
    for (const id of listed) {
      const project = readKept(texts[id]);
      if (project.ok) read += 1;
      else faults.push(`${what} ${id}: ${project.issues.map(({ message }) => message).join(' ')}`);
    }
  }
  return { read, faults };
};
