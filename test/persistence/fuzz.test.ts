import { describe, expect, it } from 'vitest';
import { demoProject } from '../../src/core/kinds/demo';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';
import { decodeLibrary } from '../../src/persistence/library/decodeLibrary';
import { fuzzLibraries, fuzzProjects } from '../run/torture/fuzzProjects';

const demo = encodeProject(demoProject('fuzz', '2026-03-01T09:00:00.000Z'));

describe('damaged files', () => {
  it.each([
    ['projects', fuzzProjects, 3303],
    ['libraries', fuzzLibraries, 4404],
  ])('200 of %s: a message, or what can be worked with and kept', (_, fuzz, seed) => {
    const { taken, refused, faults } = fuzz(200, seed);
    expect(faults).toEqual([]);
    // Damage that is always seen, or never, would try nothing.
    expect(Math.min(taken, refused)).toBeGreaterThan(15);
  });
});

const drawn = (start: string, centre: string): string =>
  demo.replace(
    /"outline": \{[^{}]*\{[^{}]*\}\s*\}/,
    `"outline": {"kind":"drawn","path":{"start":${start},"segments":[{"kind":"arc","to":{"x":75,"y":0},"centre":${centre},"clockwise":true},{"kind":"line","to":{"x":0,"y":30}}],"closed":true},"symmetric":false}`,
  );
const deep = (levels: number): string =>
  demo.replace('"notes"', `"later": ${'{"a":'.repeat(levels)}1${'}'.repeat(levels)}, "notes"`);

// Files that more of them made the app throw or wait, each cut down to its fault.
describe('project files that are more than a project can be', () => {
  it.each([
    [
      'a list of a million',
      demo.replace('"strings": [', `"strings": [${'0,'.repeat(1_000_000)}`),
      /^The file is damaged: "strings" has 1000006 values, expected at most 4000\.$/,
    ],
    [
      'a group of 5000',
      demo.replace('"own": {', `"own": {${Array.from({ length: 5000 }, (_, at) => `"a${at}":0`).join()}`),
      /"own" has 5000 values/,
    ],
    [
      'lists of lists',
      demo.replace('"strings": [', `"strings": [${`[${'0,'.repeat(3000)}0],`.repeat(100)}`),
      /more than 200000 values/,
    ],
    ['values 40 deep', deep(40), /nested more than 30 deep/],
    [
      'an arc about a centre that squares beyond all numbers',
      drawn('{"x":-75,"y":0}', '{"x":0,"y":1e300}'),
      /^The file is damaged: .*outline/,
    ],
    ['an arc that ends where it starts', drawn('{"x":75,"y":0}', '{"x":0,"y":0}'), /must end away from its start/],
    ['an arc with two radii', drawn('{"x":-75,"y":0}', '{"x":10,"y":0}'), /equally far from its centre/],
  ])('%s', (_, file, says) => {
    const read = decodeProject(file);
    expect(read.ok ? 'taken' : read.issues[0]?.message).toMatch(says);
  });

  it('what is no project is told as such, however much it is', () => {
    const read = decodeProject(`[${'0,'.repeat(1_000_000)}0]`);
    expect(read.ok ? 'taken' : read.issues[0]?.code).toBe('file.foreign');
  });

  it('a drawn outline that is sound is taken', () => {
    expect(decodeProject(drawn('{"x":-75,"y":0}', '{"x":0,"y":0}'))).toMatchObject({ ok: true });
    expect(decodeProject(demo)).toMatchObject({ ok: true });
  });
});

describe('library files that are more than a library can be', () => {
  const library = (projects: string, archived = ''): string =>
    `{"format":"saddlemark-library","version":1,"projects":[${projects}],"archived":[${archived}],"pictures":[],"bench":null}`;

  it.each([
    [
      'a project 100,000 brackets deep',
      library(`${'['.repeat(100_000)}${']'.repeat(100_000)}`),
      /not a Saddlemark project/,
    ],
    ['a project whose values are 40 deep', library(deep(40)), /nested more than 30 deep/],
    ['a million that are archived', library(demo, `${'0,'.repeat(1_000_000)}0`), /^The file is damaged/],
    [
      'a key that could reach a prototype',
      library(demo.replace('{', '{"__proto__":{"x":1},')),
      /holds the key "__proto__"/,
    ],
  ])('%s', (_, file, says) => {
    const read = decodeLibrary(file);
    expect(read.ok ? 'taken' : read.issues[0]?.message).toMatch(says);
  });

  it('a sound one is taken', () => {
    expect(decodeLibrary(library(demo))).toMatchObject({ ok: true, value: { projects: [{ id: 'fuzz' }] } });
  });
});
