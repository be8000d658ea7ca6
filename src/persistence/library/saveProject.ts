import type { Project } from '../../core/document/types';
import { entryOf } from '../../core/library/entryOf';
import { fail, ok, type Result } from '../../core/result';
import type { Database, KeptEntry } from './database';
import { keptText } from './keptText';
import { addVersion } from './versionsTable';
import { write } from './write';

/** A writing of a project. */
export interface Saving {
  /** The revision that this tab took it from; null for none. */
  readonly base: number | null;
  /** The stamp of the writing that this tab last read or made. */
  readonly seen: string | undefined;
  /** This writing's own. */
  readonly stamp: string;
  /** Of the state that is kept with it. */
  readonly version: string;
  /** ISO 8601 instant. */
  readonly at: string;
}

/** Keeps a project and a state more of it, when no other tab wrote it in the meantime. Codes: library.conflict. */
export const saveProject = (
  database: Database,
  project: Project,
  { base, seen, stamp, version, at }: Saving,
): Promise<Result<KeptEntry>> => {
  // Before anything is begun: a project that cannot be written throws here.
  const kept = keptText(project);
  return write(database, ['entries', 'projects', 'versions', 'versionTexts'], async (writing) => {
    const entries = writing.objectStore('entries');
    const there = await entries.get(project.id);
    const mine = there === undefined || there.stamp === stamp;
    // What is there word for word needs no writing, and is no conflict whoever wrote it.
    if (!mine && (await writing.objectStore('projects').get(project.id))?.text === kept.text) return ok(there);
    // A look at it, to list or to compare, sees the other tab's writing too: both have to agree.
    if (!mine && (base !== there.revision || (seen !== undefined && seen !== there.stamp)))
      return fail('', 'library.conflict', 'Another tab or window saved this project since it was read here.');
    const entry: KeptEntry = { ...entryOf(project, there?.archived ?? false), stamp };
    await entries.put(entry, project.id);
    await writing.objectStore('projects').put(kept, project.id);
    const state = { id: version, at, revision: project.revision, name: null };
    await addVersion(
      { versions: writing.objectStore('versions'), texts: writing.objectStore('versionTexts') },
      { ...state, project: project.id, pictures: project.about.pictures },
      kept,
    );
    return ok(entry);
  });
};
