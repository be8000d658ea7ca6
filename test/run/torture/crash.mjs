import path from 'node:path';
import { findBrowser } from '../findBrowser.mjs';
import { root } from '../runSteps.mjs';

/** Kills, and the random edits in the middle of which each comes. */
const ROUNDS = 50;
const EDITS = 200;
const SEED = 44;

/**
 * A browser that is killed again and again while the app keeps what is changed; a kill after which all was well counts as
 * passed.
 * @type {import('../runSteps.mjs').Step[]}
 */
export const crashSteps = [
  {
    name: 'crash',
    run: async () => {
      const { build, preview } = await import('vite');
      const { crashRounds } = await import('./crashRounds.mjs');
      const outDir = path.join(root, 'reports/torture-app');
      await build({ root, logLevel: 'error', build: { outDir, emptyOutDir: true } });
      const server = await preview({
        root,
        logLevel: 'error',
        build: { outDir },
        preview: { host: '127.0.0.1', port: 0 },
      });
      try {
        const { kills, edits, writings, damaged, lost, late, broken } = await crashRounds({
          program: findBrowser(),
          address: server.resolvedUrls?.local[0] ?? '',
          rounds: ROUNDS,
          edits: EDITS,
          seed: SEED,
          say: console.log,
        });
        console.log(`${kills} kills during ${edits} edits, ${writings} writings seen done, damaged ${damaged} times`);
        console.log(
          `${lost.length} times something was lost that was kept, ${late.length} times something older than a second, ` +
            `${broken.length} times something damaged opened or something good did not`,
        );
        const faults = [...lost, ...late, ...broken];
        return { passed: Math.max(0, kills - faults.length), failed: faults.length, faults };
      } finally {
        await server.close();
      }
    },
  },
];
