import type { IDBPObjectStore, StoreNames } from 'idb';
import type { KeptText, KeptVersion, Tables } from './database';
import { thinVersions } from './thinVersions';

type Names = ArrayLike<StoreNames<Tables>>;

/** Both tables of versions in a transaction that writes. */
export interface VersionTables<All extends Names> {
  readonly versions: IDBPObjectStore<Tables, All, 'versions', 'readwrite'>;
  readonly texts: IDBPObjectStore<Tables, All, 'versionTexts', 'readwrite'>;
}

const byOrder = (one: KeptVersion, other: KeptVersion): number => other.order - one.order;

/** A state more of a project; of those without a name some go when they stand close or are too many. */
export const addVersion = async <All extends Names>(
  { versions, texts }: VersionTables<All>,
  version: Omit<KeptVersion, 'order'>,
  kept: KeptText,
): Promise<void> => {
  const before = (await versions.index('project').getAll(version.project)).sort(byOrder);
  const [newest] = before;
  const same = newest !== undefined && (await texts.get(newest.id))?.sum === kept.sum;
  // What is as it was is no state of its own.
  if (same && version.name === null) return;
  const order = (newest?.order ?? 0) + 1;
  await versions.put({ ...version, order }, version.id);
  await texts.put(kept, version.id);
  for (const { id } of thinVersions([{ ...version, order }, ...before])) {
    await versions.delete(id);
    await texts.delete(id);
  }
};

/** The latest first. */
export const latestFirst = (versions: readonly KeptVersion[]): readonly KeptVersion[] => [...versions].sort(byOrder);
