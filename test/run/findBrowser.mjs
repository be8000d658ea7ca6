import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

/**
 * What the finder asks of the machine; the test hands in its own.
 * @typedef {object} Probes
 * @property {string} platform as in process.platform
 * @property {Record<string, string | undefined>} env
 * @property {boolean} isRoot
 * @property {(file: string) => boolean} works whether the browser at this path is there and starts
 * @property {() => string | undefined} playwrightPath where Playwright keeps its own Chromium, installed or not
 * @property {() => void} installPlaywright tries to fetch Playwright's Chromium
 * @property {() => boolean} hasApt whether this is a Debian or Ubuntu
 * @property {() => void} installDebian tries to install Debian's Chromium
 * @property {(line: string) => void} say tells a person what goes on
 */

const require = createRequire(import.meta.url);

const linuxNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];

const macPrograms = ['Chromium', 'Google Chrome', 'Microsoft Edge'];

const windowsPrograms = [
  ['Chromium', 'Application', 'chrome.exe'],
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
];

/**
 * Where Chromium, Chrome or Edge would stand on this system, the likeliest first.
 * @param {Pick<Probes, 'platform' | 'env'>} probes
 * @returns {string[]}
 */
export const systemBrowsers = ({ platform, env }) => {
  if (platform === 'win32') {
    const folders = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA].filter((folder) => folder);
    return windowsPrograms.flatMap((parts) => folders.map((folder) => path.win32.join(String(folder), ...parts)));
  }
  if (platform === 'darwin') {
    const folders = ['/Applications', ...(env.HOME ? [`${env.HOME}/Applications`] : [])];
    return macPrograms.flatMap((name) => folders.map((folder) => `${folder}/${name}.app/Contents/MacOS/${name}`));
  }
  const onPath = (env.PATH ?? '').split(':').filter((folder) => folder.startsWith('/'));
  const folders = [...new Set([...onPath, '/usr/bin', '/usr/local/bin', '/snap/bin'])];
  return linuxNames.flatMap((name) => folders.map((folder) => `${folder}/${name}`));
};

/** @type {Probes} */
const machine = {
  platform: process.platform,
  env: process.env,
  isRoot: process.getuid?.() === 0,
  works: (file) => {
    if (!existsSync(file)) return false;
    // On Windows "--version" opens a window instead of answering.
    if (process.platform === 'win32') return true;
    return spawnSync(file, ['--version'], { stdio: 'ignore', timeout: 60_000 }).status === 0;
  },
  playwrightPath: () => require('playwright').chromium.executablePath(),
  installPlaywright: () => {
    const folder = path.dirname(require.resolve('playwright/package.json'));
    spawnSync(process.execPath, [path.join(folder, 'cli.js'), 'install', 'chromium'], {
      stdio: 'inherit',
      timeout: 240_000,
    });
  },
  hasApt: () => existsSync('/usr/bin/apt-get'),
  installDebian: () => {
    const settings = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const command = 'apt-get update -q && apt-get install -q -y --no-install-recommends chromium';
    spawnSync('sh', ['-c', command], { stdio: 'inherit', env: settings, timeout: 300_000 });
  },
  say: (line) => console.log(line),
};

/**
 * The path of a browser that is already there, or undefined; installs nothing. The order: the one that the environment
 * names, Playwright's own, one of the system.
 * @param {Probes} probes
 * @returns {string | undefined}
 */
export const locateBrowser = (probes = machine) => {
  const named = probes.env.SADDLEMARK_BROWSER;
  if (named) {
    if (probes.works(named)) return named;
    throw new Error(`SADDLEMARK_BROWSER names ${named}, but no browser starts there; correct it or unset it.`);
  }
  const own = probes.playwrightPath();
  if (own && probes.works(own)) return own;
  return systemBrowsers(probes).find((file) => probes.works(file));
};

/**
 * The path of a browser that starts; where none is there, tries to install one: Playwright's Chromium, then, as root on
 * Debian or Ubuntu, the system's. Throws an Error with one sentence that says what to do when nothing helped.
 * @param {Probes} probes
 * @returns {string}
 */
export const findBrowser = (probes = machine) => {
  const there = locateBrowser(probes);
  if (there) return there;

  probes.say("No Chromium, Chrome or Edge was found; trying to install Playwright's Chromium.");
  probes.installPlaywright();
  const own = locateBrowser(probes);
  if (own) return own;

  if (probes.isRoot && probes.hasApt()) {
    probes.say("That did not work; trying Debian's chromium.");
    probes.installDebian();
    const system = locateBrowser(probes);
    if (system) return system;
  }
  throw new Error(
    'No browser was found and none could be installed: install Chromium, Chrome or Edge, ' +
      'or set SADDLEMARK_BROWSER to the path of one.',
  );
};
