import type { Project } from '../../../core/document/types';
import { copyOf, instrumentOf, modelOf } from '../../../core/library/copies';
import type { LibraryEntry } from '../../../core/ports';
import { fail, type Issue, type Result } from '../../../core/result';
import { fileName } from '../../files/fileName';
import type { Services } from '../../services';
import { entryTitle } from '../list/entryWords';
import { shelfOf } from './createShelf';

/** What can be done with what lies in the library. Each tells the maker what came of it; the open work always stays. */
export interface LibraryWork {
  open(id: string): Promise<void>;
  /** One instrument of a model, or another one of an instrument's model, opened. */
  makeInstrument(id: string, serial: string): Promise<void>;
  /** A model of an instrument, opened. */
  makeModel(id: string): Promise<void>;
  copy(id: string): Promise<void>;
  /** Its text as it is kept, good or damaged, to a file of its own. */
  saveToFile(entry: LibraryEntry): Promise<void>;
  setArchived(entry: LibraryEntry, archived: boolean): Promise<void>;
  remove(entry: LibraryEntry): Promise<void>;
  /** The project in hand or one of the library; null when it could not be read, and the maker was told why. */
  read(id: string): Promise<Project | null>;
}

const titleOf = ({ about, build }: Project): string =>
  entryTitle({ name: about.name, serial: build === null ? null : build.serial });

const inWords = (issues: readonly Issue[]): string => issues.map(({ message }) => message).join(' ');

export const libraryWork = (services: Services): LibraryWork => {
  const { store, library, files, newId, clock } = services;
  const { actions, getState } = store;
  const shelf = shelfOf(services);

  /** Runs a piece of work, and says what failed of it; null then. */
  const told = async <Value>(what: string, work: () => Promise<Result<Value>>): Promise<Value | null> => {
    try {
      const done = await work();
      if (done.ok) return done.value;
      actions.warn(`${what} Nothing was changed. ${inWords(done.issues)}`);
    } catch (error) {
      actions.warn(`${what} Nothing was changed. ${error instanceof Error ? error.message : String(error)}`);
    }
    return null;
  };

  const read: LibraryWork['read'] = async (id) => {
    const { project } = getState();
    if (project.id === id) return project;
    return told('It could not be read.', async () => (await library()).read(id));
  };

  const fresh = () => ({ id: newId(), now: clock.now() });

  /** Puts a new project into the library. */
  const keep = async (made: Project) => (await library()).save(made, null);

  /** What something is made from stays to be found: a demo or a design that was never changed is kept as well. */
  const keepOrigin = async (project: Project): Promise<void> => {
    const there = await (await library()).entry(project.id);
    if (!there.ok && there.issues.some(({ code }) => code === 'library.missing')) await keep(project);
  };

  /** Where nothing can be kept, work goes on without. */
  const begin = async (from: Project, made: Project, label: string): Promise<void> => {
    await keepOrigin(from).catch(() => {});
    const kept = await keep(made).catch((error: unknown) => fail('', 'library.closed', String(error)));
    actions.replaceProject(made, label);
    if (!kept.ok) return actions.warn(`${label}. It is not kept in the library. ${inWords(kept.issues)}`);
    await shelf.refresh();
  };

  let busy = false;
  /** One piece of work at a time: a second press makes no second instrument. */
  const alone =
    <Args extends readonly unknown[]>(work: (...args: Args) => Promise<void>) =>
    async (...args: Args): Promise<void> => {
      if (busy) return;
      busy = true;
      try {
        await work(...args);
      } finally {
        busy = false;
      }
    };

  return {
    read,
    open: async (id) => {
      const project = await read(id);
      if (project === null || project.id === getState().project.id) return;
      actions.replaceProject(project, `Opened ${titleOf(project)}`);
    },
    makeInstrument: alone(async (id, serial) => {
      const model = await read(id);
      if (model === null) return;
      const made = instrumentOf(model, serial.trim(), fresh());
      await begin(model, made, `New instrument: ${titleOf(made)}`);
    }),
    makeModel: alone(async (id) => {
      const instrument = await read(id);
      if (instrument === null) return;
      const made = modelOf(instrument, fresh());
      await begin(instrument, made, `New model: ${titleOf(made)}`);
    }),
    copy: alone(async (id) => {
      const project = await read(id);
      if (project === null) return;
      const made = copyOf(project, fresh());
      if ((await told(`${titleOf(made)} could not be kept.`, () => keep(made))) === null) return;
      await shelf.refresh();
      actions.say(`Copied as ${titleOf(made)}`);
    }),
    saveToFile: async (entry) => {
      const title = entryTitle(entry);
      const text = await told(`${title} could not be saved.`, async () => (await library()).textOf(entry.id));
      if (text === null) return;
      const name = fileName(title, '', 'saddlemark.json');
      files.download(name, 'application/json', new TextEncoder().encode(text));
      actions.say(`Saved as ${name}`);
    },
    setArchived: async (entry, archived) => {
      const what = `${entryTitle(entry)} could not be ${archived ? 'archived' : 'brought back'}.`;
      const done = await told(what, async () => {
        const set = await (await library()).setArchived(entry.id, archived);
        return set.ok ? { ok: true, value: true } : set;
      });
      if (done === null) return;
      await shelf.refresh();
      actions.say(archived ? `Archived ${entryTitle(entry)}` : `Brought ${entryTitle(entry)} back`);
    },
    remove: async (entry) => {
      const done = await told(`${entryTitle(entry)} could not be deleted.`, async () => {
        const removed = await (await library()).remove(entry.id);
        return removed.ok ? { ok: true, value: true } : removed;
      });
      if (done === null) return;
      shelf.set({ ticked: shelf.getState().ticked.filter((id) => id !== entry.id) });
      await shelf.refresh();
      actions.say(`Deleted ${entryTitle(entry)}`);
    },
  };
};
