import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createAround } from '../../src/core/derive/createAround';
import { createDerive } from '../../src/core/derive/createDerive';
import type { Project } from '../../src/core/document/types';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';
import { COMMANDS, PARTS_OF_COMMANDS } from './random/commandTable';
import { dice } from './random/dice';
import { MORNING, startStore } from './startStore';

const RUN = 200;
const SEEDS = Array.from({ length: 28 }, (_, index) => index + 1);
const NAMES = Object.keys(COMMANDS);

/** A new project of each kind in turn, the demo among them, every second one for the left hand. */
const startOf = (seed: number): Project => {
  const made = KINDS[seed % (KINDS.length + 1)]?.make('test', MORNING) ?? demoProject('test', MORNING);
  return { ...made, instrument: { ...made.instrument, hand: seed % 2 === 0 ? 'left' : 'right' } };
};

const accepted = new Map<string, number>();

describe('commands in any order', () => {
  it('are all in the table', () => {
    const folder = fileURLToPath(new URL('../../src/store/commands/', import.meta.url));
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
    const names = files.map((file) => (file.split('/').at(-1) ?? '').replace(/\.ts$/, ''));
    expect(names.filter((name) => !PARTS_OF_COMMANDS.includes(name)).sort()).toEqual([...NAMES].sort());
  });

  it.each(SEEDS)(`${RUN} of them, seed %i: each can be undone, and keeps in a file`, (seed) => {
    const chance = dice(seed);
    const { store } = startStore(null, startOf(seed));
    const derive = createDerive();
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
      const text = encodeProject(after);
      const read = decodeProject(text);
      if (!read.ok) throw new Error(`${told}: ${read.issues.map(({ message }) => message).join(' ')}`);
      expect(read.value, told).toEqual(after);
      expect(encodeProject(after), told).toBe(text);
      around(after, derive(after));
      actions.undo();
      expect(getState().project, told).toBe(before);
      actions.redo();
      expect(getState().project, told).toBe(after);
    }
  });

  it('all had their turn', () => {
    expect(NAMES.filter((name) => (accepted.get(name) ?? 0) === 0)).toEqual([]);
  });
});
