import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { LibraryEntry, VersionEntry } from '../../core/ports';

/** What is kept of a project beside its text; stamp: another one with each writing, so that no writing is taken for another. */
export interface KeptEntry extends LibraryEntry {
  readonly stamp: string;
}

/** A text with the sum that it had when it was written. */
export interface KeptText {
  readonly text: string;
  readonly sum: string;
}

/** order: counts up with each version, whatever the clock says. */
export interface KeptVersion extends VersionEntry {
  readonly project: string;
  readonly order: number;
  readonly pictures: readonly string[];
}

export interface KeptPicture {
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

/** Entries and versions lie apart from their texts, so that a list of them is read without any text. */
export interface Tables extends DBSchema {
  entries: { key: string; value: KeptEntry };
  projects: { key: string; value: KeptText };
  versions: { key: string; value: KeptVersion; indexes: { project: string } };
  versionTexts: { key: string; value: KeptText };
  pictures: { key: string; value: KeptPicture };
  /** Under one key: the id of the project in hand. */
  hand: { key: string; value: string };
}

export type Database = IDBPDatabase<Tables>;

const DATABASE_NAME = 'saddlemark';
const DATABASE_VERSION = 2;

export interface DatabaseEvents {
  /** Another tab with an older Saddlemark holds the database: it opens once that one is closed. */
  readonly blocked: () => void;
  /** The connection is gone, or has to be given up for another tab with a newer Saddlemark. */
  readonly ended: (forNewer: boolean) => void;
}

/** Opens the database of this browser, made anew or brought up to date where needed. Rejects with what the browser says. */
export const openDatabase = async ({ blocked, ended }: DatabaseEvents): Promise<Database> =>
  openDB<Tables>(DATABASE_NAME, DATABASE_VERSION, {
    upgrade(database, from) {
      if (from < 1) {
        for (const table of ['entries', 'projects', 'versionTexts', 'pictures'] as const)
          database.createObjectStore(table);
        database.createObjectStore('versions').createIndex('project', 'project');
      }
      if (from < 2) database.createObjectStore('hand');
    },
    blocked,
    blocking: (_now, _wanted, event) => {
      (event.target as IDBDatabase).close();
      ended(true);
    },
    terminated: () => ended(false),
  });
