import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/core/document/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { instrumentOf } from '../../../src/core/library/copies';
import { entryOf } from '../../../src/core/library/entryOf';
import type { Autosave, Library } from '../../../src/core/ports';
import { fail } from '../../../src/core/result';
import { shelfOf } from '../../../src/ui/record/shelf/createShelf';
import { libraryWork } from '../../../src/ui/record/shelf/libraryWork';
import type { Services } from '../../../src/ui/services';
import { MORNING, startStore } from '../../store/startStore';
import { fakeLibrary } from './fakeLibrary';

const demo = demoProject('demo', MORNING);
const twelve: Project = instrumentOf(demo, 'No. 12', { id: 'no-12', now: MORNING });

const QUIET: Autosave = {
  state: () => ({ kind: 'kept', at: null }),
  subscribe: () => () => {},
  retry: () => {},
  leaveUnread: () => {},
  keepBoth: () => {},
  takeOther: () => {},
};

/** The work on a library with the demo in hand. */
const start = (of: Library) => {
  const { store } = startStore(null, demo);
  let count = 0;
  const saved: string[][] = [];
  const services = {
    store,
    library: async () => of,
    autosave: async () => QUIET,
    files: {
      download: (name: string, _: string, bytes: Uint8Array) => saved.push([name, new TextDecoder().decode(bytes)]),
    },
    newId: () => {
      count += 1;
      return `new${count}`;
    },
    clock: { now: () => MORNING, today: () => '2026-03-01' },
  } as unknown as Services;
  const titles = async (): Promise<readonly string[]> => {
    const listed = await of.list();
    return listed.ok ? listed.value.map(({ name, serial }) => `${name} ${serial}`) : ['no list'];
  };
  return { work: libraryWork(services), shelf: shelfOf(services), store, of, titles, saved };
};

describe('libraryWork', () => {
  it('makes an instrument of the model in hand, keeps it and opens it as a step that can be undone', async () => {
    const { work, store, titles } = start(fakeLibrary([demo]));
    await work.makeInstrument('demo', '  No. 12 ');
    const { project, message } = store.getState();
    expect(project).toMatchObject({ id: 'new1', build: { serial: 'No. 12' }, about: { parent: { id: 'demo' } } });
    expect(message).toMatchObject({ kind: 'status', text: 'New instrument: Wren 14, No. 12' });
    expect(await titles()).toEqual(['Wren 14 null', 'Wren 14 No. 12']);
    store.actions.undo();
    expect(store.getState().project).toBe(demo);
  });

  it('keeps a model that was never kept, so that its instruments find it', async () => {
    const { work, titles } = start(fakeLibrary());
    await work.makeInstrument('demo', 'No. 12');
    expect(await titles()).toEqual(['Wren 14 null', 'Wren 14 No. 12']);
  });

  it('makes one instrument of two presses', async () => {
    const { work, titles } = start(fakeLibrary([demo]));
    await Promise.all([work.makeInstrument('demo', 'No. 1'), work.makeInstrument('demo', 'No. 1')]);
    expect(await titles()).toHaveLength(2);
  });

  it('goes on where nothing can be kept, and says so', async () => {
    const closed = { ...fakeLibrary([demo]), save: async () => fail<never>('', 'library.closed', 'The door is shut.') };
    const { work, store } = start(closed);
    await work.makeInstrument('demo', 'No. 1');
    expect(store.getState().project.build?.serial).toBe('No. 1');
    expect(store.getState().message).toMatchObject({
      kind: 'alert',
      text: 'New instrument: Wren 14, No. 1. It is not kept in the library. The door is shut.',
    });
  });

  it('opens, copies and makes a model of what lies in the library', async () => {
    const { work, store, titles } = start(fakeLibrary([demo, twelve]));
    await work.open('no-12');
    expect(store.getState().project.id).toBe('no-12');
    await work.copy('no-12');
    await work.makeModel('no-12');
    expect(store.getState().project).toMatchObject({ build: null, about: { parent: { id: 'no-12' } } });
    expect(await titles()).toEqual(['Wren 14 null', 'Wren 14 No. 12', 'Wren 14 copy No. 12', 'Wren 14 null']);
  });

  it('tells what cannot be opened, and leaves the work in hand', async () => {
    const { work, store } = start(fakeLibrary([demo]));
    await work.open('gone');
    expect(store.getState().project).toBe(demo);
    expect(store.getState().message).toMatchObject({
      kind: 'alert',
      text: 'It could not be read. Nothing was changed. There is no gone in the library.',
    });
  });

  it('saves what is kept to a file as it is, and says what is not there', async () => {
    const { work, store, saved } = start(fakeLibrary([twelve]));
    await work.saveToFile(entryOf(twelve, false));
    expect(saved).toEqual([['Wren 14, No. 12.saddlemark.json', 'the text of no-12']]);
    await work.saveToFile(entryOf(demo, false));
    expect(saved).toHaveLength(1);
    expect(store.getState().message.kind).toBe('alert');
  });

  it('archives, brings back and deletes, and the list follows', async () => {
    const { work, shelf, of } = start(fakeLibrary([demo, twelve]));
    await shelf.refresh();
    const entry = shelf.getState().entries?.find(({ id }) => id === 'no-12');
    if (entry === undefined) throw new Error('The list lacks No. 12.');
    await work.setArchived(entry, true);
    expect(shelf.getState().entries?.map(({ archived }) => archived)).toEqual([false, true]);
    await work.setArchived(entry, false);
    expect(shelf.getState().entries?.map(({ archived }) => archived)).toEqual([false, false]);
    shelf.set({ ticked: ['demo', 'no-12'] });
    await work.remove(entry);
    expect(shelf.getState()).toMatchObject({ ticked: ['demo'], problem: null });
    expect(shelf.getState().entries).toHaveLength(1);
    expect((await of.read('no-12')).ok).toBe(false);
  });
});

describe('the shelf', () => {
  it('says why there is no list, and lists again when asked', async () => {
    const library = fakeLibrary([demo]);
    let shut = true;
    const { shelf } = start({
      ...library,
      list: async () => (shut ? fail('', 'library.closed', 'The door is shut.') : library.list()),
    });
    await shelf.refresh();
    expect(shelf.getState()).toMatchObject({ entries: null, problem: 'The door is shut.' });
    shut = false;
    await shelf.refresh();
    expect(shelf.getState()).toMatchObject({ problem: null, entries: [{ id: 'demo' }] });
  });
});
