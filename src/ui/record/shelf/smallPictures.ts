import type { Project } from '../../../core/document/types';
import type { LibraryEntry } from '../../../core/ports';
import type { Result } from '../../../core/result';
import { type SmallPicture, smallPicture } from './smallPicture';

/** Pictures of what the list shows, made one by one while nothing else is to be done. */
export interface SmallPictures {
  /** The picture; null when there can be none, undefined while it is not made. */
  known(entry: LibraryEntry): SmallPicture | null | undefined;
  /** Asks for it; `made` is called once it is known. Answers with how to ask no more. */
  want(entry: LibraryEntry, made: () => void): () => void;
}

/** More than anyone looks through; one takes about a kilobyte. */
const MOST_KEPT = 2000;

type Wish = { readonly entry: LibraryEntry; readonly made: () => void };

const keyOf = ({ id, revision, changed }: LibraryEntry): string => `${id} ${revision} ${changed}`;

/** When the browser has nothing else to do; soon, where it does not say. */
const whenIdle = (work: () => void): void => {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(work, { timeout: 1000 });
  else setTimeout(work, 16);
};

export const createSmallPictures = (
  read: (id: string) => Promise<Result<Project>>,
  later: (work: () => void) => void = whenIdle,
): SmallPictures => {
  const kept = new Map<string, SmallPicture | null>();
  const wishes = new Set<Wish>();
  let busy = false;

  const keep = (key: string, picture: SmallPicture | null): void => {
    kept.set(key, picture);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  };
  const makeOne = async (): Promise<void> => {
    const [wish] = wishes;
    if (wish === undefined) {
      busy = false;
      return;
    }
    wishes.delete(wish);
    const key = keyOf(wish.entry);
    if (!kept.has(key)) {
      const project = await read(wish.entry.id).catch(() => null);
      keep(key, project?.ok ? smallPicture(project.value) : null);
    }
    wish.made();
    later(() => void makeOne());
  };

  return {
    known: (entry) => kept.get(keyOf(entry)),
    want: (entry, made) => {
      const wish = { entry, made };
      wishes.add(wish);
      if (!busy) {
        busy = true;
        later(() => void makeOne());
      }
      return () => wishes.delete(wish);
    },
  };
};
