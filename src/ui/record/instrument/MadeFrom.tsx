import { useState } from 'react';
import { ANY_ENTRY } from '../../../core/library/findEntries';
import { useStore } from '../../useStore';
import { CompareDialog } from '../compare/CompareDialog';
import { entryTitle } from '../list/entryWords';
import { useLibraryWork } from '../shelf/useLibraryWork';
import { useShelf } from '../shelf/useShelf';

/** What this was made from, and what was made from it. */
export function MadeFrom() {
  const { id, about, build } = useStore((state) => state.project);
  const { shelf, state } = useShelf();
  const work = useLibraryWork();
  const [comparing, setComparing] = useState(false);
  const { parent } = about;
  const from = parent === null ? undefined : state.entries?.find((entry) => entry.id === parent.id);
  const made = state.entries?.filter((entry) => entry.parent === id).length ?? 0;
  return (
    <>
      {from !== undefined && (
        <div className="made-from">
          <p>
            Made from{' '}
            <button type="button" className="link-button" onClick={() => work.open(from.id)}>
              {entryTitle(from)}
            </button>
            {parent !== null && parent.revision !== from.revision && ', which has been changed since'}
          </p>
          <div className="buttons">
            <button type="button" onClick={() => setComparing(true)}>
              Compare with its {from.serial === null ? 'model' : 'origin'}
            </button>
            {build !== null && (
              <button type="button" onClick={() => work.makeInstrument(id, '')}>
                Make another
              </button>
            )}
          </div>
        </div>
      )}
      {parent !== null && from === undefined && state.entries !== null && (
        <p className="field-note">What it was made from is not in this library any more.</p>
      )}
      {made > 0 && (
        <p className="made-from">
          {made === 1 ? '1 was' : `${made} were`} made from this.{' '}
          <button
            type="button"
            className="link-button"
            onClick={() => shelf.set({ filter: { ...ANY_ENTRY, archived: 'with', parent: id }, page: 0 })}
          >
            Show {made === 1 ? 'it' : 'them'} in the library
          </button>
        </p>
      )}
      {comparing && from !== undefined && (
        <CompareDialog
          read={async () => {
            const both = await Promise.all([work.read(from.id), work.read(id)]);
            return both[0] && both[1] ? [both[0], both[1]] : null;
          }}
          closed={() => setComparing(false)}
        />
      )}
    </>
  );
}
