import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium } from 'playwright';

/** How long a browser may take until it can be spoken to, ms. */
const LONGEST_START = 30_000;

/**
 * A browser of its own with a profile that outlives it.
 * @typedef {object} KilledBrowser
 * @property {() => Promise<import('playwright').Page>} start on what the last one left
 * @property {() => Promise<void>} kill with no chance to write anything more
 * @property {() => Promise<void>} end kills it and clears the profile away
 */

/** @param {string} file */
const read = (file) => {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
};

/**
 * @param {string} program the browser's path
 * @returns {KilledBrowser}
 */
export const killedBrowser = (program) => {
  const profile = mkdtempSync(path.join(tmpdir(), 'saddlemark-killed-'));
  const portFile = path.join(profile, 'DevToolsActivePort');
  /** @type {import('node:child_process').ChildProcess | undefined} */
  let child;
  /** @type {import('playwright').Browser | undefined} */
  let browser;

  const strike = () => {
    if (child?.pid === undefined) return;
    // The whole group at once, as when the power goes; Windows has no groups.
    try {
      process.kill(process.platform === 'win32' ? child.pid : -child.pid, 'SIGKILL');
    } catch {
      child.kill('SIGKILL');
    }
  };
  // A run that is broken off leaves no browser behind.
  process.once('exit', strike);

  const kill = async () => {
    if (child?.pid === undefined) return;
    const gone = once(child, 'exit');
    strike();
    await gone;
    child = undefined;
    await browser?.close().catch(() => {});
    browser = undefined;
  };

  return {
    start: async () => {
      rmSync(portFile, { force: true });
      child = spawn(
        program,
        [
          '--headless',
          '--no-sandbox',
          '--disable-gpu',
          '--disable-background-networking',
          '--disable-component-update',
          '--disable-sync',
          '--no-first-run',
          '--remote-debugging-port=0',
          `--user-data-dir=${profile}`,
          'about:blank',
        ],
        { stdio: 'ignore', detached: process.platform !== 'win32' },
      );
      const until = performance.now() + LONGEST_START;
      while (!read(portFile).includes('\n')) {
        if (child.exitCode !== null || performance.now() > until) throw new Error(`${program} does not start`);
        await pause(50);
      }
      browser = await chromium.connectOverCDP(`http://127.0.0.1:${read(portFile).split('\n')[0]}`);
      const [context] = browser.contexts();
      if (context === undefined) throw new Error(`${program} has no window`);
      return context.pages()[0] ?? context.newPage();
    },
    kill,
    end: async () => {
      await kill();
      process.off('exit', strike);
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    },
  };
};
