import type { Project } from '../../core/document/types';
import type { Clock, Library, LibraryEntry, NewId } from '../../core/ports';
import { ok, type Result } from '../../core/result';
import { type Connection, createConnection } from './connection';
import { createBell } from './createBell';
import { createPictures } from './createPictures';
import type { KeptEntry } from './database';
import { createHandKeeper, type HandKeeper, type KnownWritings } from './handKeeper';
import { readKept } from './keptText';
import { exportLibrary, importLibrary } from './libraryFile';
import { missing } from './missing';
import { removeProject } from './removeProject';
import { saveProject } from './saveProject';
import { addVersion, latestFirst } from './versionsTable';
import { write } from './write';

/** What the library is handed, so that it reads no clock of its own. */
export interface LibraryNeeds {
  readonly clock: Pick<Clock, 'now'>;
  readonly newId: NewId;
  /** This maker's bench settings, which go into the file of the whole library. */
  readonly bench: { read(): string | null; write(text: string): void };
  readonly connection?: Connection;
}

const withoutStamp = ({ stamp: _, ...entry }: KeptEntry): LibraryEntry => entry;

/** The library in this browser's database. */
export const createLibrary = ({
  clock,
  newId,
  bench,
  connection = createConnection(),
}: LibraryNeeds): Library & HandKeeper => {
  const bell = createBell();
  const writings: KnownWritings = { done: new Map(), underWay: new Map() };

  const rung = async <Value>(work: Promise<Result<Value>>): Promise<Result<Value>> => {
    const done = await work;
    if (done.ok) bell.ring();
    return done;
  };

  const save = async (project: Project, base: number | null): Promise<Result<LibraryEntry>> => {
    // Made once, so that a writing that is tried again knows its own.
    const [stamp, version, at] = [newId(), newId(), clock.now()];
    const { id } = project;
    writings.underWay.set(id, stamp);
    const saved = await rung(
      connection.run((database) =>
        saveProject(database, project, { base, seen: writings.done.get(id), stamp, version, at }),
      ),
    );
    if (writings.underWay.get(id) === stamp) writings.underWay.delete(id);
    if (!saved.ok) return saved;
    writings.done.set(id, saved.value.stamp);
    return ok(withoutStamp(saved.value));
  };

  return {
    ...createHandKeeper(connection, writings),
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
        if (project.ok && entry !== undefined) writings.done.set(id, entry.stamp);
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
        connection.run((database) =>
          write(database, ['entries'], async (writing) => {
            const entries = writing.objectStore('entries');
            const entry = await entries.get(id);
            if (entry === undefined) return missing();
            await entries.put({ ...entry, archived }, id);
            return ok(null);
          }),
        ),
      ),
    remove: async (id) => {
      const gone = await rung(connection.run((database) => removeProject(database, id)));
      if (gone.ok) writings.done.delete(id);
      return gone;
    },
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
        connection.run((database) =>
          write(database, ['entries', 'projects', 'versions', 'versionTexts'], async (writing) => {
            const entry = await writing.objectStore('entries').get(id);
            const kept = await writing.objectStore('projects').get(id);
            if (entry === undefined || kept === undefined) return missing();
            const version = { id: newId(), at: clock.now(), revision: entry.revision, name };
            await addVersion(
              { versions: writing.objectStore('versions'), texts: writing.objectStore('versionTexts') },
              { ...version, project: id, pictures: entry.pictures },
              kept,
            );
            return ok(version);
          }),
        ),
      ),
    ...createPictures(connection, newId),
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
