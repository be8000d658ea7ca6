import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Project } from '../../src/core/document/types';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import type { Library } from '../../src/core/ports';
import { encodeProject } from '../../src/persistence/encodeProject';
import { createConnection } from '../../src/persistence/library/connection';
import { createLibrary } from '../../src/persistence/library/createLibrary';
import { openDatabase } from '../../src/persistence/library/database';
import { valueOf as answerOf, codesOf } from '../core/document/valueOf';
import { MORNING } from '../store/startStore';

const demo = demoProject('demo', MORNING);

const named = (project: Project, name: string, revision = project.revision + 1): Project => ({
  ...project,
  revision,
  about: { ...project.about, name },
});

let count = 0;
/** A tab on the same database. */
const tab = (
  bench: string | null = null,
  now = () => '2026-03-01T12:00:00.000Z',
): Library & { readonly benches: string[] } => {
  const benches: string[] = bench === null ? [] : [bench];
  const library = createLibrary({
    clock: { now },
    newId: () => `id${++count}`,
    bench: { read: () => benches.at(-1) ?? null, write: (text) => benches.push(text) },
  });
  return { ...library, benches };
};

beforeEach(async () => {
  const { IDBFactory } = await import('fake-indexeddb');
  globalThis.indexedDB = new IDBFactory();
});

describe('the library', () => {
  it('gives back what was saved, and lists it without reading it', async () => {
    const library = tab();
    expect(answerOf(await library.list())).toEqual([]);
    answerOf(await library.save(demo, null));
    expect(answerOf(await library.read('demo'))).toEqual(demo);
    expect(answerOf(await library.list())).toMatchObject([{ id: 'demo', name: demo.about.name, archived: false }]);
    expect(answerOf(await library.entry('demo')).name).toBe(demo.about.name);
    expect(codesOf(await library.read('nowhere'))).toEqual(['library.missing']);
  });

  it('never overwrites what another tab saved', async () => {
    const [one, other] = [tab(), tab()];
    answerOf(await one.save(demo, null));
    answerOf(await other.read('demo'));
    answerOf(await other.save(named(demo, 'Theirs'), demo.revision));
    expect(codesOf(await one.save(named(demo, 'Mine'), demo.revision))).toEqual(['library.conflict']);
    expect(answerOf(await one.read('demo')).about.name).toBe('Theirs');
    // Nor is a look at what the other tab saved.
    expect(codesOf(await one.save(named(demo, 'Mine'), demo.revision))).toEqual(['library.conflict']);
    // The same revision from another writing is no excuse either.
    const third = tab();
    expect(codesOf(await third.save(named(demo, 'Third'), null))).toEqual(['library.conflict']);
  });

  it('keeps the last 50 states and named ones for good, the latest first', async () => {
    let day = 0;
    const library = tab(null, () => {
      day += 1;
      return new Date(Date.UTC(2026, 2, day)).toISOString();
    });
    answerOf(await library.save(demo, null));
    answerOf(await library.nameVersion('demo', 'as drawn'));
    for (let state = 1; state <= 60; state += 1)
      answerOf(await library.save(named(demo, `State ${state}`, demo.revision + state), demo.revision + state - 1));
    const versions = answerOf(await library.versions('demo'));
    expect(versions).toHaveLength(51);
    expect(versions.at(-1)?.name).toBe('as drawn');
    const latest = answerOf(await library.readVersion('demo', versions[0]?.id ?? ''));
    expect(latest.about.name).toBe('State 60');
    expect(answerOf(await library.readVersion('demo', versions.at(-1)?.id ?? ''))).toEqual(demo);
  });

  it('opens nothing that was damaged on the disk, and hands out its text', async () => {
    const library = tab();
    answerOf(await library.save(demo, null));
    const database = await openDatabase({ blocked: () => {}, ended: () => {} });
    const kept = await database.get('projects', 'demo');
    const text = (kept?.text ?? '').replace('632', '633');
    await database.put('projects', { text, sum: kept?.sum ?? '' }, 'demo');
    database.close();
    expect(codesOf(await library.read('demo'))).toEqual(['library.damaged']);
    expect(answerOf(await library.textOf('demo'))).toBe(text);
  });

  it('archives, and deletes with all that hangs on it', async () => {
    const library = tab();
    answerOf(await library.save(demo, null));
    answerOf(await library.setArchived('demo', true));
    expect(answerOf(await library.entry('demo')).archived).toBe(true);
    answerOf(await library.save(named(demo, 'Still archived'), demo.revision));
    expect(answerOf(await library.entry('demo')).archived).toBe(true);
    answerOf(await library.remove('demo'));
    expect(answerOf(await library.list())).toEqual([]);
    expect(answerOf(await library.versions('demo'))).toEqual([]);
  });

  it('goes to a file and comes back whole, with the bench; what is there with other content comes as a copy', async () => {
    const from = tab('{"profiles":[],"chosen":null}');
    const others = KINDS.map(({ id, make }) => make(id, MORNING));
    for (const project of [demo, ...others]) answerOf(await from.save(project, null));
    answerOf(await from.setArchived('classical', true));
    const text = answerOf(await from.exportAll());
    expect(JSON.parse(text)).toMatchObject({ format: 'saddlemark-library', version: 1 });

    const { IDBFactory } = await import('fake-indexeddb');
    globalThis.indexedDB = new IDBFactory();
    const into = tab();
    expect(answerOf(await into.importAll(text))).toEqual({ added: 10, copies: 0, same: 0 });
    expect(answerOf(await into.read('demo'))).toEqual(demo);
    expect(answerOf(await into.entry('classical')).archived).toBe(true);
    expect(into.benches).toEqual(['{"profiles":[],"chosen":null}']);
    expect(answerOf(await into.exportAll())).toBe(text);

    answerOf(await into.save(named(demo, 'Changed here'), demo.revision));
    expect(answerOf(await into.importAll(text))).toEqual({ added: 0, copies: 1, same: 9 });
    expect(answerOf(await into.read('demo')).about.name).toBe('Changed here');
  });

  it('replaces no photo by another of its name', async () => {
    const library = tab();
    const file = (base64: string): string =>
      JSON.stringify({
        format: 'saddlemark-library',
        version: 1,
        projects: [],
        archived: [],
        pictures: [{ id: 'front', type: 'image/png', base64 }],
        bench: null,
      });
    answerOf(await library.importAll(file('AAAA')));
    answerOf(await library.importAll(file('BBBB')));
    expect(JSON.parse(answerOf(await library.exportAll()))).toMatchObject({ pictures: [{ base64: 'AAAA' }] });
  });

  it('takes all of a file or nothing', async () => {
    const library = tab();
    const good = JSON.parse(answerOf(await library.exportAll())) as object;
    const file = (change: object) => JSON.stringify({ ...good, ...change });
    const bad = { ...JSON.parse(JSON.stringify(demo)), strings: [] };
    for (const [text, code] of [
      ['{', 'file.text'],
      ['{"format":"other"}', 'file.foreign'],
      [file({ version: 2 }), 'file.newer'],
      [file({ archived: 'all' }), 'file.damaged'],
      [file({ projects: [JSON.parse(JSON.stringify(demo)), bad] }), 'file.damaged'],
      [file({ pictures: [{ id: 'a', type: 'image/jpeg', base64: '*' }] }), 'file.damaged'],
    ] as const)
      expect(codesOf(await library.importAll(text))).toContain(code);
    expect(answerOf(await library.list())).toEqual([]);
  });
});

describe('a database that fails', () => {
  it('is opened again once when it was closed under the work', async () => {
    let opened = 0;
    const connection = createConnection(async (events) => {
      opened += 1;
      const database = await openDatabase(events);
      if (opened === 1) database.close();
      return database;
    });
    const library = createLibrary({
      clock: { now: () => MORNING },
      newId: () => `id${++count}`,
      bench: { read: () => null, write: () => {} },
      connection,
    });
    answerOf(await library.save(demo, null));
    expect(opened).toBe(2);
    expect(answerOf(await library.read('demo'))).toEqual(demo);
  });

  it('leaves everything as it was when there is room for a part of it only', async () => {
    const library = tab();
    answerOf(await library.save(demo, null));
    const text = JSON.stringify({
      ...(JSON.parse(answerOf(await library.exportAll())) as object),
      projects: KINDS.map(({ id, make }) => JSON.parse(encodeProject(make(id, MORNING)))),
    });
    const put = IDBObjectStore.prototype.put;
    let left = 0;
    const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...given) {
      left -= 1;
      if (left < 0) throw new DOMException('no room', 'QuotaExceededError');
      return Reflect.apply(put, this, given);
    });
    for (const room of [0, 1, 2, 3]) {
      left = room;
      expect(codesOf(await library.save(named(demo, 'Half'), demo.revision))).toEqual(['library.full']);
      left = room * 4;
      expect(codesOf(await library.importAll(text))).toEqual(['library.full']);
    }
    spy.mockRestore();
    expect(answerOf(await library.list())).toMatchObject([{ name: demo.about.name }]);
    expect(answerOf(await library.read('demo'))).toEqual(demo);
    expect(answerOf(await library.versions('demo'))).toHaveLength(1);
    // And what could not be kept is kept once there is room.
    answerOf(await library.save(named(demo, 'Whole'), demo.revision));
    expect(answerOf(await library.read('demo')).about.name).toBe('Whole');
  });

  it('that broke once the writing was done: it is tried again and is no conflict with itself', async () => {
    let breaks = true;
    const once = createConnection();
    const library = createLibrary({
      clock: { now: () => MORNING },
      newId: () => `id${++count}`,
      bench: { read: () => null, write: () => {} },
      connection: {
        run: async (work) => {
          if (breaks) await once.run(work);
          breaks = false;
          return once.run(work);
        },
      },
    });
    answerOf(await library.save(demo, null));
    expect(answerOf(await library.versions('demo'))).toHaveLength(1);
  });

  it('says that there is no room, or that nothing can be kept here', async () => {
    const refusing = (name: string) =>
      createConnection(() => Promise.reject(new DOMException('no', name))).run(async () => {
        throw new Error('never reached');
      });
    expect(codesOf(await refusing('QuotaExceededError'))).toEqual(['library.full']);
    expect(codesOf(await refusing('SecurityError'))).toEqual(['library.closed']);
    expect(codesOf(await refusing('VersionError'))).toEqual(['library.newer']);
  });

  it('that does not answer is not waited for for ever', async () => {
    vi.useFakeTimers();
    const held = createConnection((events) => {
      events.blocked();
      return new Promise(() => {});
    }).run(async () => {
      throw new Error('never reached');
    });
    await vi.advanceTimersByTimeAsync(5000);
    vi.useRealTimers();
    const answer = await held;
    expect(codesOf(answer)).toEqual(['library.closed']);
    expect(answer.ok ? '' : answer.issues[0]?.message).toContain('Another tab');
  });
});
