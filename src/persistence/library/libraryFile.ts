import * as v from 'valibot';
import type { Project } from '../../core/document/types';
import { entryOf } from '../../core/library/entryOf';
import type { Clock, NewId } from '../../core/ports';
import { fail, failed, ok, type Result } from '../../core/result';
import { decodeProject } from '../decodeProject';
import type { Database, KeptPicture } from './database';
import { keptText, readKept } from './keptText';
import { LIBRARY_SCHEMA, LIBRARY_VERSION, type LibraryFile } from './librarySchema';
import { addVersion } from './versionsTable';

const toBase64 = (bytes: ArrayBuffer): string => {
  let text = '';
  for (const byte of new Uint8Array(bytes)) text += String.fromCharCode(byte);
  return btoa(text);
};

const fromBase64 = (text: string): ArrayBuffer | null => {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)).buffer;
  } catch {
    return null;
  }
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

/** No library is larger, characters. */
const LONGEST_LIBRARY = 300_000_000;

const NOT_OURS = 'This is not a Saddlemark library: expected a file that Saddlemark wrote.';

const decodeFile = (text: string): Result<LibraryFile> => {
  if (text.length > LONGEST_LIBRARY) return fail('', 'file.large', `${NOT_OURS} It is larger than 300 MB.`);
  let file: unknown;
  try {
    file = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return fail('', 'file.text', `${NOT_OURS} It cannot be read as JSON; it may have been cut off.`);
  }
  if (typeof file !== 'object' || file === null || !('format' in file) || file.format !== 'saddlemark-library')
    return fail('', 'file.foreign', NOT_OURS);
  if ('version' in file && typeof file.version === 'number' && file.version > LIBRARY_VERSION)
    return fail('version', 'file.newer', 'This library was written by a newer Saddlemark.');
  const read = v.safeParse(LIBRARY_SCHEMA, file);
  return read.success
    ? ok(read.output)
    : fail('', 'file.damaged', 'The file is damaged: expected projects, what is archived, photos and the bench.');
};

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
  const file = decodeFile(text);
  if (!file.ok) return file;
  const projects: Project[] = [];
  for (const each of file.value.projects) {
    const project = decodeProject(JSON.stringify(each));
    if (!project.ok) return failed(project.issues);
    projects.push(project.value);
  }
  const pictures: (KeptPicture & { readonly id: string })[] = [];
  for (const { id, type, base64 } of file.value.pictures) {
    const bytes = fromBase64(base64);
    if (bytes === null) return fail('pictures', 'file.damaged', 'The file is damaged: a photo cannot be read.');
    pictures.push({ id, type, bytes });
  }
  const writing = database.transaction(['entries', 'projects', 'versions', 'versionTexts', 'pictures'], 'readwrite', {
    durability: 'strict',
  });
  const count = { added: 0, copies: 0, same: 0 };
  for (const project of projects) {
    const there = await writing.objectStore('projects').get(project.id);
    const taken = there !== undefined;
    if (taken && there.text === keptText(project).text) {
      count.same += 1;
      continue;
    }
    const added: Project = taken
      ? { ...project, id: newId(), about: { ...project.about, name: `${project.about.name} (from the file)` } }
      : project;
    const kept = keptText(added);
    const archived = file.value.archived.includes(project.id);
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
  for (const { id, type, bytes } of pictures) await writing.objectStore('pictures').put({ type, bytes }, id);
  await writing.done;
  // A bench that is set up here stays.
  if (file.value.bench !== null && bench.read() === null) bench.write(file.value.bench);
  return ok(count);
};
