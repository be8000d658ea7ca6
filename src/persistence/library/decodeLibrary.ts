import * as v from 'valibot';
import type { Project } from '../../core/document/types';
import { fail, failed, ok, type Result } from '../../core/result';
import { readProject } from '../decodeProject';
import type { KeptPicture } from './database';
import { LIBRARY_SCHEMA, LIBRARY_VERSION } from './librarySchema';

/** No library is larger, characters. */
const LONGEST_LIBRARY = 300_000_000;

const NOT_OURS = 'This is not a Saddlemark library: expected a file that Saddlemark wrote.';

/** What a library file holds, all of it checked. */
export interface LibraryContent {
  readonly projects: readonly Project[];
  /** Ids of those that were put away. */
  readonly archived: readonly string[];
  readonly pictures: readonly (KeptPicture & { readonly id: string })[];
  readonly bench: string | null;
}

const fromBase64 = (text: string): ArrayBuffer | null => {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)).buffer;
  } catch {
    return null;
  }
};

/**
 * A library from the text of its file, which is not trusted. Codes: file.large, file.text, file.foreign, file.newer,
 * file.damaged, those of decodeProject.
 */
export const decodeLibrary = (text: string): Result<LibraryContent> => {
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
  // One fault is enough to know: a list of a million of them would take as many.
  const read = v.safeParse(LIBRARY_SCHEMA, file, { abortEarly: true });
  if (!read.success)
    return fail('', 'file.damaged', 'The file is damaged: expected projects, what is archived, photos and the bench.');
  const projects: Project[] = [];
  for (const each of read.output.projects) {
    const project = readProject(each);
    if (!project.ok) return failed(project.issues);
    projects.push(project.value);
  }
  const pictures: LibraryContent['pictures'][number][] = [];
  for (const { id, type, base64 } of read.output.pictures) {
    const bytes = fromBase64(base64);
    if (bytes === null) return fail('pictures', 'file.damaged', 'The file is damaged: a photo cannot be read.');
    pictures.push({ id, type, bytes });
  }
  return ok({ projects, archived: read.output.archived, pictures, bench: read.output.bench });
};
