import { ANY_ENTRY, type LibraryFilter } from '../../../core/library/findEntries';
import type { LibraryOrder } from '../../../core/library/sortEntries';
import type { Library, LibraryEntry } from '../../../core/ports';
import type { Services } from '../../services';
import { createSmallPictures, type SmallPictures } from './smallPictures';

/** How the list of the library is looked at; it outlives a change of station. */
export interface ShelfState {
  /** Null until the library has answered. */
  readonly entries: readonly LibraryEntry[] | null;
  /** Why there is no list, in words. */
  readonly problem: string | null;
  readonly filter: LibraryFilter;
  readonly order: LibraryOrder;
  /** From 0. */
  readonly page: number;
  /** Ids of what is ticked to be compared, two at most. */
  readonly ticked: readonly string[];
}

/** The library as the screen holds it. */
export interface Shelf {
  getState(): ShelfState;
  subscribe(changed: () => void): () => void;
  set(change: Partial<ShelfState>): void;
  /** Lists the library anew. */
  refresh(): Promise<void>;
  readonly pictures: SmallPictures;
}

const FIRST: ShelfState = {
  entries: null,
  problem: null,
  filter: ANY_ENTRY,
  order: 'changed',
  page: 0,
  ticked: [],
};

/** Where the browser takes note of changes again and again, the list follows after this pause, ms. */
const PAUSE = 150;

const createShelf = ({ library, autosave }: Pick<Services, 'library' | 'autosave'>): Shelf => {
  const listeners = new Set<() => void>();
  let state = FIRST;
  const set: Shelf['set'] = (change) => {
    state = { ...state, ...change };
    for (const listener of [...listeners]) listener();
  };

  const list = async (of: Library): Promise<void> => {
    const found = await of.list();
    if (found.ok) set({ entries: found.value, problem: null });
    else set({ entries: null, problem: found.issues.map(({ message }) => message).join(' ') });
  };
  const refresh = async (): Promise<void> => {
    try {
      await list(await library());
    } catch (error) {
      set({ entries: null, problem: error instanceof Error ? error.message : String(error) });
    }
  };

  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void refresh(), PAUSE);
  };
  let kept = '';
  const follow = async (): Promise<void> => {
    (await library()).watch(soon);
    const keeper = await autosave();
    keeper.subscribe(() => {
      const now = keeper.state();
      if (now.kind !== 'kept' || now.at === null || now.at === kept) return;
      kept = now.at;
      soon();
    });
  };
  void refresh().then(follow, () => {});

  return {
    getState: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    set,
    refresh,
    pictures: createSmallPictures(async (id) => (await library()).read(id)),
  };
};

const shelves = new WeakMap<Services, Shelf>();

/** The shelf of these services: the same one for everyone who asks. */
export const shelfOf = (services: Services): Shelf => {
  const shelf = shelves.get(services) ?? createShelf(services);
  shelves.set(services, shelf);
  return shelf;
};
