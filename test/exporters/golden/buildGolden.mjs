import path from 'node:path';
import { build } from 'vite';
import { root } from '../../run/runSteps.mjs';

/**
 * Builds what makes the golden files, so that Node alone can run it.
 * @param {string} folder where it goes
 * @returns {Promise<string>} the script's path; it exports goldenFiles
 */
export const buildGolden = async (folder) => {
  const entry = path.join(root, 'test/exporters/golden/goldenFiles.ts');
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: { ssr: entry, outDir: folder, emptyOutDir: true, target: 'node20' },
  });
  return path.join(folder, 'goldenFiles.js');
};
