import type { Project } from '../../core/document/types';
import { decodeProject } from '../../persistence/decodeProject';
import { encodeProject } from '../../persistence/encodeProject';
import type { HandKeeper } from '../../persistence/library/handKeeper';

/**
 * A project that could not be kept any more before the page was left, as a text, with the marks of what the library had of it:
 * the browser may bring such a note back from long ago.
 */
export const pendingText = (library: Pick<HandKeeper, 'marksOf'>, project: Project): string =>
  JSON.stringify({ marks: library.marksOf(project.id), text: encodeProject(project) });

interface Pending {
  readonly marks: readonly string[];
  readonly text: string;
}

const isPending = (value: unknown): value is Pending =>
  typeof value === 'object' &&
  value !== null &&
  'text' in value &&
  typeof value.text === 'string' &&
  'marks' in value &&
  Array.isArray(value.marks);

const parse = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};

/** The project of such a text; null for none, and when the library was written since. */
export const readPending = async (library: Pick<HandKeeper, 'isAt'>, text: string | null): Promise<Project | null> => {
  const pending = text ? parse(text) : null;
  if (!isPending(pending)) return null;
  const read = decodeProject(pending.text);
  if (!read.ok) return null;
  const now = await library.isAt(read.value.id, pending.marks);
  // Where the library cannot be asked, this is all there is.
  return now.ok && !now.value ? null : read.value;
};
