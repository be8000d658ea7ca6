import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Project } from '../../src/core/document/types';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { openLast } from '../../src/main/autosave/openLast';
import { pendingText } from '../../src/main/autosave/pendingText';
import { createConnection } from '../../src/persistence/library/connection';
import { createLibrary } from '../../src/persistence/library/createLibrary';
import { valueOf as answerOf } from '../core/document/valueOf';
import { MORNING } from '../store/startStore';

const demo = demoProject('demo', MORNING);
const named = (name: string): Project => ({ ...demo, about: { ...demo.about, name } });
const note = (text: string | null = null) => ({ read: () => text, write: () => {} });

let count = 0;
const tab = (connection = createConnection()) =>
  createLibrary({
    clock: { now: () => MORNING },
    newId: () => `id${++count}`,
    bench: note(),
    connection,
  });

/** What a browser without a database answers. */
const closed = () => tab(createConnection(() => Promise.reject(new DOMException('insecure', 'SecurityError'))));

beforeEach(async () => {
  const { IDBFactory } = await import('fake-indexeddb');
  globalThis.indexedDB = new IDBFactory();
});

describe('what an earlier visit left', () => {
  it('is nothing at first', async () => {
    expect(await openLast(tab(), note(), note())).toEqual({ found: null, left: null, unread: null });
    expect(await openLast(closed(), note(), note())).toEqual({ found: null, left: null, unread: null });
  });

  it('is what the library was told to hold, whatever an older note says', async () => {
    const library = tab();
    const other = KINDS[0]?.make('other', MORNING) ?? demo;
    answerOf(await library.save(demo, null));
    answerOf(await library.save(other, null));
    library.hold('other');
    library.hold('demo');
    expect((await openLast(tab(), note('other'), note())).found).toEqual(demo);
    library.hold('other');
    expect((await openLast(tab(), note(), note())).found).toEqual(other);
  });

  it('is not missed when it was deleted', async () => {
    const library = tab();
    answerOf(await library.save(demo, null));
    library.hold('demo');
    answerOf(await library.remove('demo'));
    expect(await openLast(tab(), note('demo'), note())).toEqual({ found: null, left: null, unread: null });
  });

  it('is told of when it cannot be opened', async () => {
    expect((await openLast(closed(), note('demo'), note())).unread).toMatchObject({ id: 'demo' });
  });

  it('is what was not kept any more when the page was left, unless the library was written since', async () => {
    const library = tab();
    const first = pendingText(library, demo);
    expect((await openLast(tab(), note(), note(first))).left).toEqual(demo);
    answerOf(await library.save(demo, null));
    expect((await openLast(tab(), note(), note(first))).left).toBeNull();

    const second = pendingText(library, named('At the last moment'));
    expect((await openLast(tab(), note('demo'), note(second))).left?.about.name).toBe('At the last moment');
    // A browser may bring the note back although the same visit went on and kept more.
    answerOf(await library.save(named('Later'), demo.revision));
    const visit = await openLast(tab(), note('demo'), note(second));
    expect(visit.left).toBeNull();
    expect(visit.found?.about.name).toBe('Later');
  });

  it('counts the writing that was under way when the page was left', async () => {
    const library = tab();
    answerOf(await library.save(demo, null));
    const saving = library.save(named('Being written'), demo.revision);
    const text = pendingText(library, named('Typed meanwhile'));
    // Whether that writing is done or not.
    expect((await openLast(tab(), note('demo'), note(text))).left?.about.name).toBe('Typed meanwhile');
    answerOf(await saving);
    expect((await openLast(tab(), note('demo'), note(text))).left?.about.name).toBe('Typed meanwhile');
  });

  it('is all there is where the library cannot be asked', async () => {
    const text = pendingText(tab(), demo);
    expect((await openLast(closed(), note('demo'), note(text))).left).toEqual(demo);
    for (const bad of ['{', 'null', '{"marks":[],"text":"{}"}', '{"text":""}'])
      expect((await openLast(closed(), note(), note(bad))).left).toBeNull();
  });
});
