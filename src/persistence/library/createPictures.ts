import type { Library, NewId } from '../../core/ports';
import { ok } from '../../core/result';
import type { Connection } from './connection';
import { missing } from './missing';
import { shrinkPicture } from './shrinkPicture';
import { write } from './write';

/** The library's photos. */
export const createPictures = (
  connection: Connection,
  newId: NewId,
): Pick<Library, 'addPicture' | 'pictureAddress'> => {
  const addresses = new Map<string, string>();
  return {
    addPicture: async (bytes) => {
      const small = await shrinkPicture(bytes);
      if (!small.ok) return small;
      const kept = { type: small.value.type, bytes: await small.value.arrayBuffer() };
      const id = newId();
      return connection.run((database) =>
        write(database, ['pictures'], async (writing) => {
          await writing.objectStore('pictures').put(kept, id);
          return ok(id);
        }),
      );
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
  };
};
