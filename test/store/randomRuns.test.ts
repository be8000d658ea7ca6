import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createAround } from '../../src/core/derive/createAround';
import { allFields } from '../../src/core/document/fieldAt';
import type { Project } from '../../src/core/document/types';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';
import { chooseBody } from '../../src/store/commands/body/chooseBody';
import { chooseCutaway } from '../../src/store/commands/body/chooseCutaway';
import { choosePlate } from '../../src/store/commands/body/choosePlate';
import { chooseSoundhole } from '../../src/store/commands/body/chooseSoundhole';
import { chooseWireHole } from '../../src/store/commands/body/chooseWireHole';
import { drawFreely } from '../../src/store/commands/outline/drawFreely';
import { chooseRepair } from '../../src/store/commands/repair/chooseRepair';
import { setField } from '../../src/store/commands/setField';
import { chooseSole } from '../../src/store/commands/sole/chooseSole';
import { COMMANDS, LABEL_FILES, PARTS_OF_COMMANDS, valueFor } from './random/commandTable';
import { dice } from './random/dice';
import { MORNING, startStore } from './startStore';

const RUN = 200;
const SEEDS = Array.from({ length: 20 }, (_, index) => index + 1);
const STARTS = KINDS.length + 1;
const NAMES = Object.keys(COMMANDS);

/** What a start is given beside its kind: each may be refused for a kind. */
const GROUPS = [chooseBody, choosePlate, chooseSoundhole, chooseCutaway, chooseWireHole, chooseRepair, chooseSole];

/** A project with body, repair and sole, and where it is `drawn`, an outline drawn freely. */
const furnished = (project: Project, drawn: boolean): Project => {
  const full = GROUPS.reduce((before, choose) => {
    const after = choose(before, true);
    return after.ok ? after.value : before;
  }, project);
  const free = drawn ? drawFreely(full) : null;
  return free?.ok ? free.value : full;
};

/** A new project of each kind in turn, the demo among them; the hand changes from start to start and round to round. */
const startOf = (seed: number): Project => {
  const round = Math.floor(seed / STARTS);
  const made = KINDS[seed % STARTS]?.make('test', MORNING) ?? demoProject('test', MORNING);
  const hand = (seed + (STARTS % 2 === 0 ? round : 0)) % 2 === 0 ? 'left' : 'right';
  const project: Project = { ...made, instrument: { ...made.instrument, hand } };
  return seed % 4 === 0 ? project : furnished(project, seed % 4 > 1);
};

/** Throws, or fails, when the project does not come out of its file as it went in. */
const expectKept = (project: Project, told: string): void => {
  const read = decodeProject(encodeProject(project));
  if (!read.ok) throw new Error(`${told}: ${read.issues.map(({ message }) => message).join(' ')}`);
  expect(read.value, told).toEqual(project);
};

const accepted = new Map<string, number>();

describe('commands in any order', () => {
  it('are all in the table', () => {
    const folder = fileURLToPath(new URL('../../src/store/commands/', import.meta.url));
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
    const names = files.map((file) => (file.split('/').at(-1) ?? '').replace(/\.ts$/, ''));
    expect(names.filter((name) => ![...PARTS_OF_COMMANDS, ...LABEL_FILES].includes(name)).sort()).toEqual(
      [...NAMES].sort(),
    );
    // A part is one only when another command uses it.
    const sources = files.map((file) => readFileSync(`${folder}${file}`, 'utf8')).join('\n');
    expect(PARTS_OF_COMMANDS.filter((part) => !sources.includes(`/${part}';`))).toEqual([]);
  });

  it.each(SEEDS)(`${RUN} of them, seed %i: each can be undone, and keeps in a file`, (seed) => {
    const chance = dice(seed);
    const start = startOf(seed);
    const { store } = startStore(null, start);
    let steps = 0;
    const around = createAround(() => null);
    const { actions, getState } = store;
    for (let count = 0; count < RUN; count += 1) {
      const before = getState().project;
      // Fields are most of what a maker changes.
      const name = chance.below(4) === 0 ? 'setField' : (chance.of(NAMES) ?? 'setField');
      const command = COMMANDS[name]?.(before, chance);
      if (command === undefined) throw new Error(`There is no row for ${name}.`);
      const told = `${name}, command ${count}`;
      const issues = actions.change(name, command);
      const after = getState().project;
      if (issues.length > 0) {
        expect(after, told).toBe(before);
        expect(
          issues.every(({ message }) => message.length > 5),
          told,
        ).toBe(true);
        continue;
      }
      if (after === before) continue;
      accepted.set(name, (accepted.get(name) ?? 0) + 1);
      steps += 1;
      expectKept(after, told);
      around(after, getState().derived);
      actions.undo();
      expect(getState().project, told).toBe(before);
      actions.redo();
      expect(getState().project, told).toBe(after);
    }
    for (let count = 0; count < steps; count += 1) actions.undo();
    expect(getState().project).toBe(start);
  });

  it.each([0, 5, 10].map((kind) => KINDS[kind]?.make ?? demoProject))('set every field of start %#', (make) => {
    const project = furnished(make('test', MORNING), false);
    const chance = dice(7);
    const { store } = startStore(null, project);
    const fields = allFields(project);
    const set = fields.filter((field) => {
      const value = valueFor(field, chance);
      const issues = store.actions.change(field.path, (before) => setField(before, { field, value }));
      const after = store.getState().project;
      if (issues.length > 0) {
        expect(after, field.path).toBe(project);
        expect(
          issues.every(({ message }) => message.length > 5),
          field.path,
        ).toBe(true);
        return false;
      }
      if (after !== project) {
        expectKept(after, `${field.path} ${value}`);
        store.actions.undo();
        expect(store.getState().project, field.path).toBe(project);
      }
      return true;
    });
    expect(set.length).toBeGreaterThan(fields.length / 2);
  });

  it('all had their turn', () => {
    expect(NAMES.filter((name) => (accepted.get(name) ?? 0) === 0)).toEqual([]);
  });
});
