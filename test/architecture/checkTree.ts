import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { findCycles } from './findCycles';
import { readSource, type Source } from './readSource';
import { coreOrder, longestFile, neighbours, neverInCore, outsideCore, packages } from './table';

/** The part of src that a file belongs to: 'core/geom', 'core/result', 'ui', 'main'. */
const partOf = (file: string): string => {
  const [first = '', second = ''] = file.split('/').map((name) => name.replace(/\.tsx?$/, ''));
  return first === 'core' ? `core/${second}` : first;
};

const isWithin = (file: string, place: string) => file === place || file.startsWith(`${place}/`);

/** What a relative import means, from src; undefined when nothing is there. */
const resolveImport = (src: string, from: string, name: string): string | undefined => {
  const base = path.resolve(src, path.dirname(from), name.replace(/\?.*$/, ''));
  const found = ['', '.ts', '.tsx', '/index.ts', '/index.tsx']
    .map((ending) => base + ending)
    .find((file) => existsSync(file) && statSync(file).isFile());
  return found && path.relative(src, found).split(path.sep).join('/');
};

const packageOf = (name: string) => name.split('/', name.startsWith('@') ? 2 : 1).join('/');

/** Whether one part may import another, by the table; a part may always import itself. */
const mayImport = (from: string, to: string): boolean => {
  if (from === to) return true;
  const [fromTop = '', fromCore = ''] = from.split('/');
  const [toTop = '', toCore = ''] = to.split('/');
  if (fromTop !== 'core' || toTop !== 'core') return neighbours[fromTop]?.includes(toTop) ?? false;
  const order: readonly string[] = coreOrder;
  return order.indexOf(toCore) >= 0 && order.indexOf(toCore) < order.indexOf(fromCore);
};

const isKnown = (part: string) => {
  const [top = '', inner = ''] = part.split('/');
  return top in neighbours && (top !== 'core' || (coreOrder as readonly string[]).includes(inner));
};

const packageFault = (file: string, name: string): string | undefined => {
  const row = packages[packageOf(name)];
  if (row === undefined) return `imports ${name}, which is not in the table`;
  const places = row.oneFileIn === undefined ? row.in : [...row.in, row.oneFileIn];
  return places.some((place) => isWithin(file, place)) ? undefined : `may not import ${packageOf(name)}`;
};

const purityFaults = ({ uses, declares, usesChance }: Source): string[] => [
  ...neverInCore.filter((name) => uses.has(name)).map((name) => `core may not use ${name}`),
  ...outsideCore.filter((name) => uses.has(name) && !declares.has(name)).map((name) => `core may not use ${name}`),
  ...(usesChance ? ['core may not use Math.random, nor Math without naming what of it'] : []),
];

/** Packages that one file of a place may import: the faults of all further files. */
const crowdFaults = (importers: ReadonlyMap<string, readonly string[]>): string[] =>
  Object.entries(packages).flatMap(([name, { oneFileIn }]) => {
    const files = (importers.get(name) ?? []).filter((file) => oneFileIn !== undefined && isWithin(file, oneFileIn));
    return files.length > 1 ? [`${files.join(', ')}: only one file of ${oneFileIn} may import ${name}`] : [];
  });

/**
 * Holds every file of a source folder against the table.
 *
 * @param src path of the folder that holds main.tsx and core
 * @returns one line for each fault, "file: what is wrong", paths from src
 */
export const checkTree = (src: string): string[] => {
  const faults: string[] = [];
  const graph = new Map<string, string[]>();
  const importers = new Map<string, string[]>();
  const all = readdirSync(src, { recursive: true, encoding: 'utf8' }).map((file) => file.split(path.sep).join('/'));
  const files = all.filter((file) => /\.(tsx?|css)$/.test(file)).sort();

  for (const file of files) {
    const say = (fault: string) => faults.push(`${file}: ${fault}`);
    const code = readFileSync(path.join(src, file), 'utf8');
    const lines = code.split('\n').length - 1;
    if (lines > longestFile) say(`has ${lines} lines, more than ${longestFile}`);
    if (file.endsWith('.css')) continue;

    const part = partOf(file);
    if (!isKnown(part)) say('lies in no folder of the table');
    const source = readSource(file, code);
    if (source.exportsDefault) say('has a default export');
    if (part.startsWith('core/')) purityFaults(source).forEach(say);
    const reached: string[] = [];
    for (const name of source.imports) {
      if (!name.startsWith('.')) {
        const fault = packageFault(file, name);
        if (fault) say(fault);
        importers.set(packageOf(name), [...(importers.get(packageOf(name)) ?? []), file]);
        continue;
      }
      const target = resolveImport(src, file, name);
      if (target === undefined) say(`imports ${name}, which is not there`);
      else if (target.startsWith('..')) say(`imports ${name}, which lies outside src`);
      else if (!mayImport(part, partOf(target))) say(`may not import ${target}`);
      else if (/\.tsx?$/.test(target)) reached.push(target);
    }
    graph.set(file, reached);
  }
  const circles = findCycles(graph).map(
    (chain) => `${chain[0]}: imports itself by way of ${chain.slice(1).join(' → ')}`,
  );
  return [...faults, ...crowdFaults(importers), ...circles];
};
