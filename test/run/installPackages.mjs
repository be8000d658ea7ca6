import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';

/** @typedef {{ version?: string, optional?: boolean }} LockedPackage */

/**
 * Which locked packages are missing from what npm noted down as installed, or stand there in another version. Optional
 * ones are made for one system each, so that some are always missing.
 * @param {Record<string, LockedPackage>} locked `packages` of package-lock.json
 * @param {Record<string, LockedPackage>} installed `packages` of node_modules/.package-lock.json
 * @returns {string[]}
 */
export const stalePackages = (locked, installed) =>
  Object.entries(locked)
    .filter(([folder]) => folder !== '')
    .filter(([folder, wanted]) => {
      const found = installed[folder];
      return found === undefined ? !wanted.optional : found.version !== wanted.version;
    })
    .map(([folder]) => folder);

/**
 * @param {string} file
 * @returns {Record<string, LockedPackage> | undefined} undefined where there is no such file, or npm was cut short
 */
const readPackages = (file) => {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
};

/**
 * Installs what package-lock.json asks for when it is missing or stale. Uses nothing but Node and npm. Throws an Error
 * with one sentence for people when that is not possible.
 * @param {string} root the project's folder
 */
export const installPackages = (root) => {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    throw new Error(`Saddlemark needs Node 20.19 or newer; this is Node ${process.versions.node}.`);
  }
  const locked = readPackages(path.join(root, 'package-lock.json'));
  if (locked === undefined) throw new Error('package-lock.json is missing or damaged; restore it from the repository.');
  const installed = readPackages(path.join(root, 'node_modules', '.package-lock.json'));
  if (installed !== undefined && stalePackages(locked, installed).length === 0) return;

  console.log(installed === undefined ? 'Installing packages.' : 'Packages are out of date; installing them again.');
  const npm = process.env.npm_execpath;
  const given = ['ci', '--include=dev', '--ignore-scripts', '--no-audit', '--no-fund'];
  const ended = npm?.endsWith('npm-cli.js')
    ? spawnSync(process.execPath, [npm, ...given], { cwd: root, stdio: 'inherit' })
    : spawnSync('npm', given, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  if (ended.status !== 0) {
    throw new Error('The packages could not be installed: see what npm says above, and whether the network is there.');
  }
};
