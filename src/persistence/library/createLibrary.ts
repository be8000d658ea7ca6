import type { Project } from '../../core/document/types';
import { entryOf } from '../../core/library/entryOf';
import type { Clock, Library, LibraryEntry, NewId } from '../../core/ports';
import { fail, ok, type Result } from '../../core/result';
import { type Connection, createConnection } from './connection';
import type { KeptEntry } from './database';
import { keptText, readKept } from './keptText';
import { exportLibrary, importLibrary } from './libraryFile';
import { shrinkPicture } from './shrinkPicture';
import { addVersion, latestFirst } from './versionsTable';

/** What the library is handed, so that it reads no clock of its own. */
export interface LibraryNeeds {
  readonly clock: Pick<Clock, 'now'>;
  readonly newId: NewId;
  /** This maker's bench settings, which go into the file of the whole library. */
  readonly bench: { read(): string | null; write(text: string): void };
  readonly connection?: Connection;
}

const CHANNEL = 'saddlemark-library';
const STRICT = { durability: 'strict' } as const;

const withoutStamp = ({ stamp: _, ...entry }: KeptEntry): LibraryEntry => entry;

const missing = (): Result<never> => fail('', 'library.missing', 'It is not in the library any more.');

/** Every other tab, and every other part of this one, is told of changes. */
const createBell = () => {
  const out = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(CHANNEL);
  return {
    ring: (): void => out?.postMessage('changed'),
    watch: (changed: () => void): (() => void) => {
      if (typeof BroadcastChannel === 'undefined') return () => {};
      const into = new BroadcastChannel(CHANNEL);
      into.addEventListener('message', changed);
      return () => into.close();
    },
  };
};

/** The library in this browser's database. */
export const createLibrary = ({ clock, newId, bench, connection = createConnection() }: LibraryNeeds): Library => {
  const bell = createBell();
  /** The writing of each project that this tab last read or made itself. */
  const seen = new Map<string, string>();
  const addresses = new Map<string, string>();

  const rung = async <Value>(work: Promise<Result<Value>>): Promise<Result<Value>> => {
    const done = await work;
    if (done.ok) bell.ring();
    return done;
  };

  const save = (project: Project, base: number | null): Promise<Result<LibraryEntry>> =>
    rung(
      connection.run(async (database) => {
        // Before anything is begun: a project that cannot be written throws here, and leaves all as it was.
        const kept = keptText(project);
        const writing = database.transaction(['entries', 'projects', 'versions', 'versionTexts'], 'readwrite', STRICT);
        const entries = writing.objectStore('entries');
        const there = await entries.get(project.id);
        const known = seen.get(project.id);
        const elsewhere =
          there !== undefined && (known === undefined ? base !== there.revision : known !== there.stamp);
        if (elsewhere) {
          writing.abort();
          await writing.done.catch(() => {});
          return fail('', 'library.conflict', 'Another tab or window saved this project since it was read here.');
        }
        const entry: KeptEntry = { ...entryOf(project, there?.archived ?? false), stamp: newId() };
        await entries.put(entry, project.id);
        await writing.objectStore('projects').put(kept, project.id);
        const state = { id: newId(), at: clock.now(), revision: project.revision, name: null };
        await addVersion(
          { versions: writing.objectStore('versions'), texts: writing.objectStore('versionTexts') },
          { ...state, project: project.id, pictures: project.about.pictures },
          kept,
        );
        await writing.done;
        seen.set(project.id, entry.stamp);
        return ok(withoutStamp(entry));
      }),
    );

  return {
    list: () => connection.run(async (database) => ok((await database.getAll('entries')).map(withoutStamp))),
    entry: (id) =>
      connection.run(async (database) => {
        const entry = await database.get('entries', id);
        return entry === undefined ? missing() : ok(withoutStamp(entry));
      }),
    read: (id) =>
      connection.run(async (database) => {
        const reading = database.transaction(['entries', 'projects']);
        const [entry, kept] = await Promise.all([
          reading.objectStore('entries').get(id),
          reading.objectStore('projects').get(id),
        ]);
        const project = readKept(kept);
        if (project.ok && entry !== undefined) seen.set(id, entry.stamp);
        return project;
      }),
    textOf: (id) =>
      connection.run(async (database) => {
        const kept = await database.get('projects', id);
        return kept === undefined ? missing() : ok(kept.text);
      }),
    save,
    setArchived: (id, archived) =>
      rung(
        connection.run(async (database) => {
          const writing = database.transaction('entries', 'readwrite', STRICT);
          const entry = await writing.store.get(id);
          if (entry === undefined) return missing();
          await writing.store.put({ ...entry, archived }, id);
          await writing.done;
          return ok(null);
        }),
      ),
    remove: (id) =>
      rung(
        connection.run(async (database) => {
          const writing = database.transaction(
            ['entries', 'projects', 'versions', 'versionTexts', 'pictures'],
            'readwrite',
            STRICT,
          );
          const versions = writing.objectStore('versions');
          for (const { id: version } of await versions.index('project').getAll(id)) {
            await versions.delete(version);
            await writing.objectStore('versionTexts').delete(version);
          }
          await writing.objectStore('entries').delete(id);
          await writing.objectStore('projects').delete(id);
          const left = await Promise.all([writing.objectStore('entries').getAll(), versions.getAll()]);
          const shown = new Set(left.flat().flatMap(({ pictures }) => pictures));
          const pictures = writing.objectStore('pictures');
          for (const picture of await pictures.getAllKeys()) if (!shown.has(picture)) await pictures.delete(picture);
          await writing.done;
          seen.delete(id);
          return ok(null);
        }),
      ),
    versions: (id) =>
      connection.run(async (database) =>
        ok(
          latestFirst(await database.getAllFromIndex('versions', 'project', id)).map(
            ({ id: version, at, revision, name }) => ({ id: version, at, revision, name }),
          ),
        ),
      ),
    readVersion: (_, version) =>
      connection.run(async (database) => readKept(await database.get('versionTexts', version))),
    nameVersion: (id, name) =>
      rung(
        connection.run(async (database) => {
          const writing = database.transaction(
            ['entries', 'projects', 'versions', 'versionTexts'],
            'readwrite',
            STRICT,
          );
          const [entry, kept] = await Promise.all([
            writing.objectStore('entries').get(id),
            writing.objectStore('projects').get(id),
          ]);
          if (entry === undefined || kept === undefined) return missing();
          const version = { id: newId(), at: clock.now(), revision: entry.revision, name };
          await addVersion(
            { versions: writing.objectStore('versions'), texts: writing.objectStore('versionTexts') },
            { ...version, project: id, pictures: entry.pictures },
            kept,
          );
          await writing.done;
          return ok(version);
        }),
      ),
    addPicture: async (bytes) => {
      const small = await shrinkPicture(bytes);
      if (!small.ok) return small;
      const kept = { type: small.value.type, bytes: await small.value.arrayBuffer() };
      return connection.run(async (database) => {
        const id = newId();
        await database.put('pictures', kept, id);
        return ok(id);
      });
    },
    pictureAddress: async (id) => {
      const before = addresses.get(id);
      if (before !== undefined) return ok(before);
      return connection.run(async (database) => {
        const kept = await database.get('pictures', id);
        if (kept === undefined) return missing();
        const address = URL.createObjectURL(new Blob([kept.bytes], { type: kept.type }));
        addresses.set(id, address);
        return ok(address);
      });
    },
    exportAll: () => connection.run((database) => exportLibrary(database, bench.read())),
    importAll: (text) => rung(connection.run((database) => importLibrary(database, text, { clock, newId, bench }))),
    watch: bell.watch,
    place: async () => {
      const storage = typeof navigator === 'undefined' ? undefined : navigator.storage;
      const [lasting, estimate] = await Promise.all([
        storage?.persisted?.().catch(() => null) ?? null,
        storage?.estimate?.().catch(() => null) ?? null,
      ]);
      return { lasting: lasting ?? null, used: estimate?.usage ?? null, room: estimate?.quota ?? null };
    },
  };
};
