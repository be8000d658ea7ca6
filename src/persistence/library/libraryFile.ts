import type { Project } from '../../core/document/types';
import { entryOf } from '../../core/library/entryOf';
import type { Clock, NewId } from '../../core/ports';
import { fail, ok, type Result } from '../../core/result';
import type { Database } from './database';
import { decodeLibrary } from './decodeLibrary';
import { keptText, readKept } from './keptText';
import { LIBRARY_VERSION } from './librarySchema';
import { addVersion } from './versionsTable';
import { write } from './write';

const toBase64 = (bytes: ArrayBuffer): string => {
  let text = '';
  for (const byte of new Uint8Array(bytes)) text += String.fromCharCode(byte);
  return btoa(text);
};

/** Everything that the library holds as the text of one file: none, when one of its projects cannot be read. Codes: library.damaged. */
export const exportLibrary = async (database: Database, bench: string | null): Promise<Result<string>> => {
  const reading = database.transaction(['entries', 'projects', 'pictures']);
  const [entries, ids, texts, pictureIds, pictures] = await Promise.all([
    reading.objectStore('entries').getAll(),
    reading.objectStore('projects').getAllKeys(),
    reading.objectStore('projects').getAll(),
    reading.objectStore('pictures').getAllKeys(),
    reading.objectStore('pictures').getAll(),
  ]);
  const whole = texts.map(readKept);
  const broken = whole.findIndex(({ ok: good }) => !good);
  if (broken >= 0) {
    const name = entries.find(({ id }) => id === ids[broken])?.name ?? ids[broken] ?? '';
    return fail(
      '',
      'library.damaged',
      `“${name}” cannot be read any more: download its text, delete it, and try again.`,
    );
  }
  const file = {
    format: 'saddlemark-library',
    version: LIBRARY_VERSION,
    projects: texts.map(({ text }): unknown => JSON.parse(text)),
    archived: entries.filter(({ archived }) => archived).map(({ id }) => id),
    pictures: pictures.map(({ type, bytes }, index) => ({ id: pictureIds[index], type, base64: toBase64(bytes) })),
    bench,
  };
  return ok(`${JSON.stringify(file, null, 1)}\n`);
};

/** Of an instrument's name; what tells a copy apart comes after the first 64. */
const LONGEST_NAME = 80;
const COPY = ' (from the file)';

const copyName = (name: string): string => name.slice(0, LONGEST_NAME - COPY.length).trimEnd() + COPY;

/**
 * Adds what a file holds, all of it or nothing. Codes: file.large, file.text, file.foreign, file.newer, file.damaged, those of
 * decodeProject.
 */
export const importLibrary = async (
  database: Database,
  text: string,
  {
    clock,
    newId,
    bench,
  }: {
    readonly clock: Pick<Clock, 'now'>;
    readonly newId: NewId;
    readonly bench: { read(): string | null; write(text: string): void };
  },
): Promise<Result<{ readonly added: number; readonly copies: number; readonly same: number }>> => {
  const file = decodeLibrary(text);
  if (!file.ok) return file;
  const { projects, archived: putAway, pictures } = file.value;
  const tables = ['entries', 'projects', 'versions', 'versionTexts', 'pictures'] as const;
  const done = await write(database, [...tables], async (writing) => {
    const count = { added: 0, copies: 0, same: 0 };
    for (const project of projects) {
      const there = await writing.objectStore('projects').get(project.id);
      const taken = there !== undefined;
      if (taken && there.text === keptText(project).text) {
        count.same += 1;
        continue;
      }
      const added: Project = taken
        ? { ...project, id: newId(), about: { ...project.about, name: copyName(project.about.name) } }
        : project;
      const kept = keptText(added);
      const archived = putAway.includes(project.id);
      await writing.objectStore('entries').put({ ...entryOf(added, archived), stamp: newId() }, added.id);
      await writing.objectStore('projects').put(kept, added.id);
      const version = { id: newId(), at: clock.now(), revision: added.revision, name: null };
      await addVersion(
        { versions: writing.objectStore('versions'), texts: writing.objectStore('versionTexts') },
        { ...version, project: added.id, pictures: added.about.pictures },
        kept,
      );
      if (taken) count.copies += 1;
      else count.added += 1;
    }
    const held = writing.objectStore('pictures');
    // A photo that is here is not replaced by another of its name.
    for (const { id, type, bytes } of pictures)
      if ((await held.getKey(id)) === undefined) await held.put({ type, bytes }, id);
    return ok(count);
  });
  // A bench that is set up here stays.
  if (done.ok && file.value.bench !== null && bench.read() === null) bench.write(file.value.bench);
  return done;
};
