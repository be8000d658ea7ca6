import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkTree } from './architecture/checkTree';

const root = fileURLToPath(new URL('..', import.meta.url));
const src = path.join(root, 'src');

/** What is wrong, the file, its source, and the fault that must be named. */
const planted: [string, string, string, string][] = [
  [
    'a folder of core that uses a later one',
    'core/geom/planted1.ts',
    "import '../document/target';",
    'may not import core/document/target.ts',
  ],
  [
    'the same as a type',
    'core/geom/planted2.ts',
    "import type { A } from '../document/target';",
    'may not import core/document/target.ts',
  ],
  [
    'the same in an import type',
    'core/geom/planted3.ts',
    "export type B = import('../document/target').A;",
    'may not import core/document/target.ts',
  ],
  ['core that reaches up', 'core/document/planted4.ts', "export * from '../../ui/App';", 'may not import ui/App.tsx'],
  [
    'neighbours that may not meet',
    'canvas/planted5.ts',
    "import { App } from '../ui/App';",
    'may not import ui/App.tsx',
  ],
  [
    'ui that reads the database',
    'ui/planted6.ts',
    "await import('../persistence/target');",
    'may not import persistence/target.ts',
  ],
  [
    'ui that starts a worker',
    'ui/planted7.ts',
    "new URL('../workers/target.ts', import.meta.url);",
    'may not import workers/target.ts',
  ],
  [
    'ui that starts a worker by query',
    'ui/planted8.ts',
    "import W from '../workers/target?worker';",
    'may not import workers/target.ts',
  ],
  [
    'an import of no fixed name',
    'ui/planted9.ts',
    'export const load = (name: string) => import(name);',
    'imports (computed), which is not in the table',
  ],
  ['a file that is not there', 'ui/planted10.ts', "import './nowhere';", 'imports ./nowhere, which is not there'],
  ['paper outside of canvas', 'ui/planted11.ts', "import paper from 'paper/dist/paper-core';", 'may not import paper'],
  ['jsPDF outside of its folder', 'exporters/planted12.ts', "export { jsPDF } from 'jspdf';", 'may not import jspdf'],
  ['React in the canvas', 'canvas/planted13.ts', "import type { FC } from 'react';", 'may not import react'],
  ['a package in core', 'core/geom/planted14.ts', "import { object } from 'valibot';", 'may not import valibot'],
  [
    'a package that nobody agreed on',
    'ui/planted15.ts',
    "import '@some/package/part';",
    'imports @some/package/part, which is not in the table',
  ],
  ["Node's own modules", 'store/planted16.ts', "import 'node:fs';", 'imports node:fs, which is not in the table'],
  [
    'chance in core',
    'core/numeric/planted17.ts',
    'export const throwDice = () => Math.random();',
    'core may not use Math.random',
  ],
  ['chance in core, hidden', 'core/numeric/planted18.ts', 'const { random } = Math;', 'core may not use Math.random'],
  ['chance in core, in brackets', 'core/numeric/planted19.ts', "Math['random']();", 'core may not use Math.random'],
  ['the clock in core', 'core/numeric/planted20.ts', 'export const now = () => new Date();', 'core may not use Date'],
  ['the page in core', 'core/numeric/planted21.ts', "document.title = 'x';", 'core may not use document'],
  [
    'the page in core, by default value',
    'core/numeric/planted22.ts',
    'export const f = (w = window) => w;',
    'core may not use window',
  ],
  ['a default export', 'core/numeric/planted23.ts', 'export default 1;', 'has a default export'],
  ['a folder of its own making', 'helpers/planted24.ts', 'export const a = 1;', 'lies in no folder of the table'],
  [
    'a folder of its own making in core',
    'core/helpers/planted25.ts',
    'export const a = 1;',
    'lies in no folder of the table',
  ],
  ['a file of 301 lines', 'ui/planted26.ts', 'export {};\n'.repeat(301), 'has 301 lines, more than 300'],
];

/** Files that keep to the table, or that the planted faults reach for. */
const sound: Record<string, string> = {
  'core/document/target.ts': "import { describe } from 'valibot';\nexport type A = typeof describe;\n",
  'persistence/target.ts': 'export type A = 1;\n',
  'workers/target.ts': 'export type A = 1;\n',
  'core/bridge/sound.ts': 'export const f = (document: { window: number }) => document.window + Math.sqrt(2);\n',
  'exporters/pdf/sound.ts': "import { jsPDF } from 'jspdf';\nimport '../../core/document/target';\n",
  'canvas/sound.ts': "import 'paper';\nimport '../core/document/target';\nexport const now = Date.now();\n",
  'ui/sound.tsx': "import { useState } from 'react';\nimport './sound.css';\n",
  'ui/sound.css': 'h1 { margin: 0 }\n',
};

/** A circle of types alone, and two files of ui that both import the store library. */
const together: Record<string, string> = {
  'core/geom/circleA.ts': "import type { B } from './circleB';\nexport type A = B;\n",
  'core/geom/circleB.ts': "import type { C } from './circleC';\nexport type B = C;\n",
  'core/geom/circleC.ts': "import type { A } from './circleA';\nexport type C = A;\n",
  'ui/crowdA.ts': "import { useStore } from 'zustand';\n",
  'ui/crowdB.ts': "import { useStore } from 'zustand';\n",
};

describe('the sources', () => {
  it('keep to the table of imports, packages, purity and length', () => {
    expect(checkTree(src)).toEqual([]);
  });
});

describe('the check itself, on a copy of the sources with planted faults', () => {
  let copy = '';
  let faults: string[] = [];
  beforeAll(() => {
    copy = mkdtempSync(path.join(tmpdir(), 'saddlemark-'));
    cpSync(src, copy, { recursive: true });
    const files = [
      ...Object.entries({ ...sound, ...together }),
      ...planted.map(([, file, code]) => [file, code] as const),
    ];
    for (const [file, code] of files) {
      mkdirSync(path.dirname(path.join(copy, file)), { recursive: true });
      writeFileSync(path.join(copy, file), code);
    }
    faults = checkTree(copy);
  });
  afterAll(() => rmSync(copy, { recursive: true, force: true }));

  it.each(planted)('finds %s', (_what, file, _code, fault) => {
    const found = faults.filter((line) => line.startsWith(`${file}:`));
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(fault);
  });

  it('finds a circle of files, also one of types alone', () => {
    expect(faults.filter((line) => line.includes('circle'))).toEqual([
      'core/geom/circleA.ts: imports itself by way of core/geom/circleB.ts → core/geom/circleC.ts → core/geom/circleA.ts',
    ]);
  });

  it('finds a second file of ui that imports the store library', () => {
    const [found, ...more] = faults.filter((line) => line.includes('crowd'));
    expect(found).toMatch(/ui\/crowdA\.ts, (.*, )?(ui\/)?crowdB\.ts.*: only one file of ui may import zustand/);
    expect(more).toEqual([]);
  });

  it('finds nothing in what is allowed', () => {
    expect(faults.filter((line) => Object.keys(sound).some((file) => line.startsWith(file)))).toEqual([]);
  });
});

describe('what the documents say', () => {
  const { scripts } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')) as { scripts: object };
  /** Scripts that a text tells people to run; `npm install` and its like are npm's own. */
  const namedScripts = (text: string) =>
    [...text.matchAll(/npm (?:run ([\w:-]+)|(start|test)\b)/g)].map((match) => match[1] ?? match[2]);

  it('is read as meant', () => {
    expect(namedScripts('`npm start`, `npm run test:readers`, `npm install`')).toEqual(['start', 'test:readers']);
  });

  it.each(['README.md', 'DEVELOPERS.md'])('%s, once it is there, names only npm scripts that exist', (name) => {
    const file = path.join(root, name);
    const text = existsSync(file) ? readFileSync(file, 'utf8') : '';
    expect(Object.keys(scripts)).toEqual(expect.arrayContaining(namedScripts(text)));
  });
});
