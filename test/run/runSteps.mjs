import { spawn } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { installPackages } from './installPackages.mjs';

/** The project's folder. */
export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

/** Programs that the packages bring, by the script that Node runs. */
const programs = {
  tsc: 'typescript/bin/tsc',
  biome: '@biomejs/biome/bin/biome',
  knip: 'knip/bin/knip.js',
  vite: 'vite/bin/vite.js',
  vitest: 'vitest/vitest.mjs',
  playwright: '@playwright/test/cli.js',
};

/**
 * Runs one program of the packages in the project's folder, its output passed on.
 * @param {keyof typeof programs} program
 * @param {string[]} given
 * @param {Record<string, string>} env added to the environment
 * @returns {Promise<boolean>} whether it ended with success
 */
export const run = (program, given, env = {}) =>
  new Promise((resolve) => {
    const script = path.join(root, 'node_modules', programs[program]);
    const child = spawn(process.execPath, [script, ...given], {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, ...env },
    });
    child.once('error', () => resolve(false));
    child.once('exit', (code) => resolve(code === 0));
  });

/** @typedef {import('./countReports.mjs').Count} Count */
/** @typedef {{ name: string, run: () => Promise<Count> }} Step */

/**
 * What a step came to; one that throws counts as one failure.
 * @param {Step} step
 * @returns {Promise<Count & { name: string, seconds: number }>}
 */
const runStep = async ({ name, run }) => {
  console.log(`\n=== ${name}`);
  const started = performance.now();
  const count = await run().catch((error) => ({ passed: 0, failed: 1, faults: [error.message] }));
  return { name, seconds: (performance.now() - started) / 1000, ...count };
};

const packages = {
  name: 'packages',
  run: async () => {
    installPackages(root);
    return { passed: 0, failed: 0, faults: [] };
  },
};

/**
 * Installs the packages where need be, runs one step after the other whatever became of the one before, then prints
 * what each came to, every fault, and as the last line the sum. Sets the exit code. Nothing runs without packages.
 * @param {Step[]} steps
 */
export const runSteps = async (steps) => {
  const done = [await runStep(packages)];
  if (done[0]?.failed === 0) for (const step of steps) done.push(await runStep(step));

  console.log('\n=== what it came to');
  for (const { name, passed, failed, seconds, faults } of done) {
    console.log(`${name.padEnd(10)} ${passed} passed, ${failed} failed (${seconds.toFixed(1)} s)`);
    for (const fault of faults) console.log(`  - ${fault}`);
  }
  const passed = done.reduce((sum, step) => sum + step.passed, 0);
  const failed = done.reduce((sum, step) => sum + step.failed, 0);
  process.exitCode = failed === 0 ? 0 : 1;
  console.log(`\n${passed} passed, ${failed} failed`);
};
