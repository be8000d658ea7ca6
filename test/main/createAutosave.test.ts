import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import type { Library } from '../../src/core/ports';
import { fail } from '../../src/core/result';
import { createAutosave } from '../../src/main/autosave/createAutosave';
import { MORNING, startStore } from '../store/startStore';
import { fakeLibrary } from '../ui/record/fakeLibrary';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const demo = demoProject('demo', MORNING);

/** A visit on a library that had the demo. */
const visit = (library: Library, start = demo) => {
  const { store } = startStore(null, start);
  const written: string[] = [];
  let ids = 0;
  const autosave = createAutosave({
    store,
    library,
    clock: { now: () => '2026-03-01T12:41:00.000Z' },
    newId: () => `new-${++ids}`,
    start,
    opened: true,
    last: { write: (id) => written.push(id) },
    askToLast: () => written.push('asked'),
    unread: null,
    pending: { write: (text) => written.push(text || 'nothing pending') },
    encode: ({ about }) => `text of ${about.name}`,
  });
  return { store, autosave, written };
};

const rename = (store: ReturnType<typeof startStore>['store'], name: string): void => {
  store.actions.change(`Name ${name}`, (project) => ({
    ok: true,
    value: { ...project, about: { ...project.about, name } },
  }));
};

const nameIn = async (library: Library, id: string): Promise<string | null> => {
  const read = await library.read(id);
  return read.ok ? read.value.about.name : null;
};

describe('autosave', () => {
  it('keeps a change within a second, one writing for changes close together, and asks once to last', async () => {
    const library = fakeLibrary([demo]);
    const saves = vi.spyOn(library, 'save');
    const { store, autosave, written } = visit(library);
    rename(store, 'One');
    await vi.advanceTimersByTimeAsync(200);
    rename(store, 'Two');
    expect(autosave.state()).toEqual({ kind: 'kept', at: null });
    await vi.advanceTimersByTimeAsync(300);
    expect(await nameIn(library, 'demo')).toBe('Two');
    expect(autosave.state()).toEqual({ kind: 'kept', at: '2026-03-01T12:41:00.000Z' });
    expect(saves).toHaveBeenCalledTimes(1);
    rename(store, 'Three');
    await vi.advanceTimersByTimeAsync(300);
    expect(written.filter((each) => each === 'asked')).toHaveLength(1);
    expect(written).toContain('demo');
  });

  it('does not wait for ever while changes go on', async () => {
    const library = fakeLibrary([demo]);
    const { store } = visit(library);
    for (let change = 1; change <= 7; change += 1) {
      rename(store, `${change}`);
      await vi.advanceTimersByTimeAsync(200);
    }
    // What was changed more than a second ago is there.
    expect(Number(await nameIn(library, 'demo'))).toBeGreaterThanOrEqual(5);
  });

  it('keeps undo and redo like any change', async () => {
    const library = fakeLibrary([demo]);
    const { store } = visit(library);
    rename(store, 'One');
    await vi.advanceTimersByTimeAsync(400);
    store.actions.undo();
    await vi.advanceTimersByTimeAsync(400);
    expect(await nameIn(library, 'demo')).toBe(demo.about.name);
    store.actions.redo();
    await vi.advanceTimersByTimeAsync(400);
    expect(await nameIn(library, 'demo')).toBe('One');
  });

  it('keeps what is put aside for another project before its pause is over', async () => {
    const library = fakeLibrary([demo]);
    const { store, written } = visit(library);
    rename(store, 'Changed at the last moment');
    const other = KINDS[0]?.make('other', MORNING) ?? demo;
    store.actions.replaceProject(other, 'New');
    await vi.advanceTimersByTimeAsync(400);
    expect(await nameIn(library, 'demo')).toBe('Changed at the last moment');
    expect(await nameIn(library, 'other')).toBe(other.about.name);
    expect(written.filter((each) => each !== 'nothing pending').at(-1)).toBe('other');
  });

  it('tells of a conflict, overwrites nothing, and keeps both', async () => {
    const library = fakeLibrary([demo]);
    const [mine, theirs] = [visit(library), visit(library)];
    rename(theirs.store, 'Theirs');
    await vi.advanceTimersByTimeAsync(400);
    rename(mine.store, 'Mine');
    await vi.advanceTimersByTimeAsync(400);
    expect(mine.autosave.state()).toMatchObject({ kind: 'conflict', other: { name: 'Theirs' } });
    rename(mine.store, 'Mine again');
    await vi.advanceTimersByTimeAsync(1500);
    expect(await nameIn(library, 'demo')).toBe('Theirs');
    mine.autosave.keepBoth();
    await vi.advanceTimersByTimeAsync(400);
    expect(await nameIn(library, 'demo')).toBe('Theirs');
    expect(await nameIn(library, mine.store.getState().project.id)).toBe('Mine again (this tab’s)');
    expect(mine.autosave.state().kind).toBe('kept');
    const listed = await library.list();
    expect(listed.ok && listed.value).toHaveLength(2);
  });

  it('asks when a file holds another state of what the library has, and replaces nothing', async () => {
    const newest = { ...demo, revision: 9, about: { ...demo.about, name: 'Newest' } };
    const library = fakeLibrary([newest]);
    const { store, autosave } = visit(library, demoProject('other', MORNING));
    const old = { ...demo, revision: 3, about: { ...demo.about, name: 'Old file' } };
    store.actions.replaceProject(old, 'Opened Old file');
    await vi.advanceTimersByTimeAsync(400);
    expect(autosave.state()).toMatchObject({ kind: 'conflict', other: { name: 'Newest' } });
    expect(await nameIn(library, 'demo')).toBe('Newest');
  });

  it('leaves alone what another tab left behind', async () => {
    const library = fakeLibrary([demo]);
    const { store, written } = visit(library);
    rename(store, 'Theirs');
    await vi.advanceTimersByTimeAsync(400);
    expect(written).toContain('demo');
    expect(written).not.toContain('nothing pending');
  });

  it('keeps both under names that a file may hold, 80 letters at most', async () => {
    const library = fakeLibrary([demo]);
    const [mine, theirs] = [visit(library), visit(library)];
    rename(theirs.store, 'Theirs');
    await vi.advanceTimersByTimeAsync(400);
    rename(mine.store, 'M'.repeat(80));
    await vi.advanceTimersByTimeAsync(400);
    mine.autosave.keepBoth();
    await vi.advanceTimersByTimeAsync(400);
    const { id, about } = mine.store.getState().project;
    expect(about.name).toBe(`${'M'.repeat(67)} (this tab’s)`);
    expect(about.name).toHaveLength(80);
    expect(await nameIn(library, id)).toBe(about.name);
  });

  it('loses nothing of this tab when it is left before the maker chose', async () => {
    const library = fakeLibrary([demo]);
    const [mine, theirs] = [visit(library), visit(library)];
    rename(theirs.store, 'Theirs');
    await vi.advanceTimersByTimeAsync(400);
    rename(mine.store, 'Mine');
    await vi.advanceTimersByTimeAsync(400);
    mine.autosave.leave();
    expect(mine.written.at(-1)).toBe('text of Mine (this tab’s)');
    await vi.advanceTimersByTimeAsync(1500);
    expect(await nameIn(library, 'demo')).toBe('Theirs');
    // It came back after all, and took the other: nothing is left to open.
    mine.autosave.takeOther();
    await vi.advanceTimersByTimeAsync(400);
    expect(mine.written.at(-1)).toBe('nothing pending');
  });

  it('takes the other tab’s as one step that can be undone', async () => {
    const library = fakeLibrary([demo]);
    const [mine, theirs] = [visit(library), visit(library)];
    rename(theirs.store, 'Theirs');
    await vi.advanceTimersByTimeAsync(400);
    rename(mine.store, 'Mine');
    await vi.advanceTimersByTimeAsync(400);
    mine.autosave.takeOther();
    await vi.advanceTimersByTimeAsync(400);
    expect(mine.store.getState().project.about.name).toBe('Theirs');
    mine.store.actions.undo();
    expect(mine.store.getState().project.about.name).toBe('Mine');
  });

  it('says what cannot be kept, goes on, and tries again', async () => {
    const library = fakeLibrary([demo]);
    const save = vi.spyOn(library, 'save').mockResolvedValue(fail('', 'library.full', 'There is no room left.'));
    const { store, autosave } = visit(library);
    rename(store, 'One');
    await vi.advanceTimersByTimeAsync(400);
    expect(autosave.state()).toMatchObject({ kind: 'not-kept', code: 'library.full' });
    rename(store, 'Two');
    expect(store.getState().project.about.name).toBe('Two');
    save.mockRestore();
    autosave.retry();
    await vi.advanceTimersByTimeAsync(10);
    expect(await nameIn(library, 'demo')).toBe('Two');
    expect(autosave.state().kind).toBe('kept');
  });

  it('writes at once when the page is hidden', async () => {
    const library = fakeLibrary([demo]);
    const { store, autosave, written } = visit(library);
    rename(store, 'Hidden');
    autosave.leave();
    // At once, for a database may be too slow for a page that is being closed.
    expect(written).toEqual(['text of Hidden']);
    await vi.advanceTimersByTimeAsync(1);
    expect(await nameIn(library, 'demo')).toBe('Hidden');
    expect(written).toContain('nothing pending');
    autosave.leave();
    expect(written.filter((each) => each.startsWith('text'))).toHaveLength(1);
  });
});
