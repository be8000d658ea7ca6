import { ok, type Result } from '../../core/result';
import type { Connection } from './connection';
import { write } from './write';

/** Which project is in hand, for the next visit. */
export interface HandKeeper {
  /** Its id; null for none. Codes: as the library. */
  inHand(): Promise<Result<string | null>>;
  /** Takes another in hand. Where that cannot be kept, the next visit begins with the one before. */
  hold(id: string): void;
  /** Marks of the writing of a project that this tab last read or made, and of the one under way. */
  marksOf(id: string): readonly string[];
  /** Whether what the library has of a project bears one of these marks: no mark stands for a project that it has not. */
  isAt(id: string, marks: readonly string[]): Promise<Result<boolean>>;
}

/** The writings of each project that this tab knows of, by their stamps. */
export interface KnownWritings {
  readonly done: Map<string, string>;
  readonly underWay: Map<string, string>;
}

const KEY = 'project';

export const createHandKeeper = (connection: Connection, { done, underWay }: KnownWritings): HandKeeper => {
  let held: string | null = null;
  return {
    inHand: () => connection.run(async (database) => ok((await database.get('hand', KEY)) ?? null)),
    hold: (id) => {
      if (id === held) return;
      held = id;
      const keep = connection.run((database) =>
        write(database, ['hand'], async (writing) => {
          await writing.objectStore('hand').put(id, KEY);
          return ok(null);
        }),
      );
      keep.then((kept) => {
        if (!kept.ok && held === id) held = null;
      });
    },
    marksOf: (id) => [done.get(id), underWay.get(id)].filter((mark) => mark !== undefined),
    isAt: (id, marks) =>
      connection.run(async (database) => {
        const entry = await database.get('entries', id);
        return ok(entry === undefined ? marks.length === 0 : marks.includes(entry.stamp));
      }),
  };
};
