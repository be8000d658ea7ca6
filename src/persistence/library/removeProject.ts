import { ok, type Result } from '../../core/result';
import type { Database } from './database';
import { write } from './write';

/** Takes a project out with its versions, and the photos that nothing shows any more. */
export const removeProject = (database: Database, id: string): Promise<Result<null>> =>
  write(database, ['entries', 'projects', 'versions', 'versionTexts', 'pictures'], async (writing) => {
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
    return ok(null);
  });
