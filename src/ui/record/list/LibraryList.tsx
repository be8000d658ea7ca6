import { useEffect, useMemo, useRef, useState } from 'react';
import { ANY_ENTRY, findEntries, type LibraryFilter } from '../../../core/library/findEntries';
import { sortEntries } from '../../../core/library/sortEntries';
import type { LibraryEntry } from '../../../core/ports';
import { useStore } from '../../useStore';
import { CompareDialog } from '../compare/CompareDialog';
import { useLibraryWork } from '../shelf/useLibraryWork';
import { useShelf } from '../shelf/useShelf';
import { DeleteDialog } from './DeleteDialog';
import { EntryRow } from './EntryRow';
import { entryTitle } from './entryWords';
import { LibraryFilters } from './LibraryFilters';
import { PageTurner } from './PageTurner';
import { TickedBar } from './TickedBar';

/** Rows on a page: as many as are looked through at a glance. */
const PAGE = 30;

/** Everything that the library holds, as it is looked for; a page at a time. */
export function LibraryList({ entries }: { readonly entries: readonly LibraryEntry[] }) {
  const { shelf, state } = useShelf();
  const work = useLibraryWork();
  const current = useStore(({ project }) => project.id);
  const [deleting, setDeleting] = useState<LibraryEntry | null>(null);
  const [compared, setCompared] = useState<readonly [string, string] | null>(null);
  const { filter, order, ticked } = state;
  const top = useRef<HTMLDivElement>(null);

  const sorted = useMemo(() => sortEntries(entries, order), [entries, order]);
  const found = useMemo(() => findEntries(sorted, filter), [sorted, filter]);
  const page = Math.max(0, Math.min(state.page, Math.ceil(found.length / PAGE) - 1));
  const shown = found.slice(page * PAGE, (page + 1) * PAGE);

  const find = (change: Partial<LibraryFilter>): void => shelf.set({ filter: { ...filter, ...change }, page: 0 });
  const turned = useRef(page);
  useEffect(() => {
    if (turned.current !== page) top.current?.scrollIntoView({ block: 'nearest' });
    turned.current = page;
  }, [page]);

  /** A row that is gone leaves the focus nowhere: it goes to the count of what is left. */
  const keepFocus = (): void => {
    requestAnimationFrame(() => {
      if (document.activeElement === document.body) top.current?.focus();
    });
  };

  const parent = filter.parent === null ? null : entries.find(({ id }) => id === filter.parent);
  return (
    <>
      <LibraryFilters
        entries={entries}
        filter={filter}
        order={order}
        find={find}
        sort={(chosen) => shelf.set({ order: chosen, page: 0 })}
      />
      {filter.parent !== null && (
        <p className="library-of">
          Only what was made from {parent ? entryTitle(parent) : 'a model that is gone'}{' '}
          <button type="button" onClick={() => find({ parent: null })}>
            Show all
          </button>
        </p>
      )}
      <TickedBar entries={entries} ticked={ticked} compare={setCompared} clear={() => shelf.set({ ticked: [] })} />
      <div ref={top} className="library-count" tabIndex={-1}>
        <p aria-live="polite">
          {found.length === entries.length
            ? `${entries.length} in the library`
            : `${found.length} of ${entries.length} in the library`}
        </p>
        {found.length === 0 && entries.length > 0 && (
          <button type="button" onClick={() => find(ANY_ENTRY)}>
            Look for anything
          </button>
        )}
      </div>
      <ul className="entries" aria-label="Library">
        {shown.map((entry) => (
          <EntryRow
            key={entry.id}
            entry={entry}
            inHand={entry.id === current}
            ticked={ticked.includes(entry.id)}
            tick={(wanted) => {
              const others = ticked.filter((id) => id !== entry.id);
              shelf.set({ ticked: wanted ? [...others.slice(-1), entry.id] : others });
            }}
            work={work}
            archive={() => void work.setArchived(entry, !entry.archived).then(keepFocus)}
            remove={() => setDeleting(entry)}
            showMade={() => find({ ...ANY_ENTRY, archived: 'with', parent: entry.id })}
          />
        ))}
      </ul>
      <PageTurner page={page} size={PAGE} count={found.length} turn={(to) => shelf.set({ page: to })} />
      {deleting !== null && (
        <DeleteDialog
          entry={deleting}
          made={entries.filter(({ parent: from }) => from === deleting.id).length}
          remove={() => void work.remove(deleting).then(keepFocus)}
          closed={() => setDeleting(null)}
        />
      )}
      {compared !== null && (
        <CompareDialog
          read={async () => {
            const both = await Promise.all(compared.map(work.read));
            return both[0] && both[1] ? [both[0], both[1]] : null;
          }}
          closed={() => setCompared(null)}
        />
      )}
    </>
  );
}
