import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { demoProject } from '../../src/core/kinds/demo';
import { createLibrary } from '../../src/persistence/library/createLibrary';
import { valueOf as answerOf } from '../core/document/valueOf';
import { MORNING } from '../store/startStore';

// A name has 80 characters at most, by its row in the field table; " (from the file)" has 16.
it('a copy from a library file can be read again, however long its name was', async () => {
  const { IDBFactory } = await import('fake-indexeddb');
  globalThis.indexedDB = new IDBFactory();
  let count = 0;
  const library = createLibrary({
    clock: { now: () => MORNING },
    newId: () => `id${++count}`,
    bench: { read: () => null, write: () => {} },
  });
  const project = demoProject('demo', MORNING);
  const long = { ...project, about: { ...project.about, name: 'x'.repeat(80) } };
  answerOf(await library.save(long, null));
  const file = answerOf(await library.exportAll());
  answerOf(await library.save({ ...long, revision: 1, about: { ...long.about, notes: 'changed here' } }, 0));
  expect(answerOf(await library.importAll(file))).toEqual({ added: 0, copies: 1, same: 0 });
  const entries = answerOf(await library.list());
  expect(entries.map(({ name }) => name).sort()).toEqual(['x'.repeat(80), `${'x'.repeat(64)} (from the file)`].sort());
  for (const { id } of entries) answerOf(await library.read(id));
});
