import type { Result } from '../../core/result';
import { fail } from '../../core/result';
import { type Database, openDatabase } from './database';
import { faultOf, isBroken } from './faultOf';

/** The database, opened when it is first needed and again when the browser closed it. */
export interface Connection {
  /** Runs a piece of work; once more on a new connection when the one there was broke. Never rejects. */
  run<Value>(work: (database: Database) => Promise<Result<Value>>): Promise<Result<Value>>;
}

const BLOCKED =
  'Another tab or window still has an older Saddlemark open and holds the library. Close it; this one goes on by itself.';

/** How long work waits for another tab to let go, ms. */
const PATIENCE = 4000;

export const createConnection = (open = openDatabase): Connection => {
  let current: Promise<Database> | null = null;
  let held = false;

  const connect = (): Promise<Database> => {
    if (current !== null) return current;
    held = false;
    const opened = open({
      blocked: () => {
        held = true;
      },
      ended: () => {
        if (current === opened) current = null;
      },
    });
    current = opened;
    opened.catch(() => {
      if (current === opened) current = null;
    });
    return opened;
  };

  /** The database; null while another tab holds it back. */
  const patient = (): Promise<Database | null> => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<null>((resolve) => {
      timer = setTimeout(() => resolve(null), PATIENCE);
    });
    return Promise.race([connect(), late]).finally(() => clearTimeout(timer));
  };

  const once = async <Value>(work: (database: Database) => Promise<Result<Value>>): Promise<Result<Value>> => {
    const database = await patient();
    if (database !== null) return work(database);
    const why = held ? BLOCKED : 'The library of this browser does not answer. Save your work to a file.';
    return fail('', 'library.closed', why);
  };

  return {
    run: async (work) => {
      try {
        return await once(work);
      } catch (error) {
        if (!isBroken(error)) return faultOf(error);
      }
      current?.then((database) => database.close()).catch(() => {});
      current = null;
      try {
        return await once(work);
      } catch (error) {
        return faultOf(error);
      }
    },
  };
};
