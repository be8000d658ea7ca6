import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/core/document/types';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { createLibrary } from '../../src/persistence/library/createLibrary';
import { valueOf as answerOf } from '../core/document/valueOf';
import { COMMANDS } from '../store/random/commandTable';
import { dice } from '../store/random/dice';
import { MORNING } from '../store/startStore';

const STARTS = [demoProject('kept', MORNING), ...KINDS.map(({ make }) => make('kept', MORNING))];
const ROWS = Object.values(COMMANDS);

/** A project after some commands of any kind. */
const worked = (start: Project, seed: number, commands: number): Project => {
  const chance = dice(seed);
  let now = start;
  for (let left = commands; left > 0; left--) {
    const after = chance.of(ROWS)?.(now, chance)(now);
    if (after?.ok === true) now = after.value;
  }
  return now;
};

describe('what is kept', () => {
  it('is the same project, and the same bytes when it is kept again, for any project', async () => {
    let count = 0;
    const library = createLibrary({
      clock: { now: () => MORNING },
      newId: () => `id${++count}`,
      bench: { read: () => null, write: () => {} },
    });
    const projects = fc.tuple(fc.constantFrom(...STARTS), fc.nat(), fc.integer({ min: 0, max: 25 }));
    await fc.assert(
      fc.asyncProperty(projects, async ([start, seed, commands]) => {
        const project = worked(start, seed, commands);
        answerOf(await library.save(project, null));
        const text = answerOf(await library.textOf('kept'));
        const again = answerOf(await library.read('kept'));
        expect(again).toEqual(project);
        answerOf(await library.save(again, again.revision));
        expect(answerOf(await library.textOf('kept'))).toBe(text);
        answerOf(await library.remove('kept'));
      }),
      { numRuns: 500 },
    );
  });
});
