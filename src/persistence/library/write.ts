import type { IDBPTransaction, StoreNames } from 'idb';
import type { Result } from '../../core/result';
import type { Database, Tables } from './database';

/** A transaction that writes, on some of the tables. */
export type Writing<Names extends StoreNames<Tables>> = IDBPTransaction<Tables, Names[], 'readwrite'>;

/**
 * Writes all of a piece of work or nothing of it: when it fails or throws, the tables are as they were. Answers once the bytes
 * are on the disk, as far as the browser says so. Rejects with what the browser says of it.
 */
export const write = async <Names extends StoreNames<Tables>, Value>(
  database: Database,
  tables: Names[],
  work: (writing: Writing<Names>) => Promise<Result<Value>>,
): Promise<Result<Value>> => {
  const writing = database.transaction(tables, 'readwrite', { durability: 'strict' });
  const takeBack = async (): Promise<void> => {
    try {
      writing.abort();
    } catch {
      // The browser has done it already.
    }
    await writing.done.catch(() => {});
  };
  try {
    const done = await work(writing);
    if (done.ok) await writing.done;
    else await takeBack();
    return done;
  } catch (error) {
    await takeBack();
    // What is told of each request is that all was taken back; why, only the whole knows.
    throw writing.error ?? error;
  }
};
