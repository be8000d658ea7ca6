import { useId, useState } from 'react';
import type { LibraryEntry } from '../../../core/ports';
import { useLengths } from '../../useLengths';
import type { LibraryWork } from '../shelf/libraryWork';
import { dayWords } from '../whenWords';
import { entryLine, entryTitle } from './entryWords';
import { SmallDrawing } from './SmallDrawing';

interface EntryRowProps {
  readonly entry: LibraryEntry;
  readonly inHand: boolean;
  readonly ticked: boolean;
  readonly tick: (wanted: boolean) => void;
  readonly work: LibraryWork;
  readonly archive: () => void;
  readonly remove: () => void;
  /** Shows only what was made from this one. */
  readonly showMade: () => void;
}

/** One model or instrument of the library, and what can be done with it. */
export function EntryRow({ entry, inHand, ticked, tick, work, archive, remove, showMade }: EntryRowProps) {
  const { withUnit } = useLengths();
  const [open, setOpen] = useState(false);
  const more = useId();
  const title = entryTitle(entry);
  const photos = entry.pictures.length;
  return (
    <li className="entry" aria-current={inHand || undefined}>
      <SmallDrawing entry={entry} />
      <div className="entry-words">
        <h3>{title}</h3>
        <p>{entryLine(entry, withUnit)}</p>
        <p className="quiet">
          {inHand && <strong>In hand. </strong>}
          {entry.archived && <strong>Archived. </strong>}
          {entry.serial === null ? 'Model' : 'Instrument'}, changed {dayWords(entry.changed)}
          {photos > 0 && `, ${photos === 1 ? '1 photo' : `${photos} photos`}`}
        </p>
      </div>
      <div className="entry-acts">
        <button type="button" aria-disabled={inHand} aria-label={`Open ${title}`} onClick={() => work.open(entry.id)}>
          Open
        </button>
        <button
          type="button"
          aria-expanded={open}
          aria-controls={more}
          aria-label={`More for ${title}`}
          onClick={() => setOpen(!open)}
        >
          {open ? 'Less' : 'More'}
        </button>
        <label className="check">
          <input
            type="checkbox"
            checked={ticked}
            aria-label={`Compare ${title}`}
            onChange={({ target }) => tick(target.checked)}
          />
          Compare
        </label>
      </div>
      {open && (
        <fieldset id={more} className="entry-more">
          <legend className="for-readers">{title}</legend>
          <button type="button" onClick={() => work.makeInstrument(entry.id, '')}>
            {entry.serial === null ? 'Make an instrument of this model' : 'Make another of its model'}
          </button>
          {entry.serial !== null && (
            <button type="button" onClick={() => work.makeModel(entry.id)}>
              Make a model of it
            </button>
          )}
          {entry.serial === null && (
            <button type="button" onClick={showMade}>
              Show what was made from it
            </button>
          )}
          <button type="button" onClick={() => work.copy(entry.id)}>
            Copy
          </button>
          <button type="button" onClick={() => work.saveToFile(entry)}>
            Save to a file
          </button>
          <button type="button" onClick={archive}>
            {entry.archived ? 'Bring back from the archive' : 'Archive'}
          </button>
          <button
            type="button"
            aria-disabled={inHand}
            title={inHand ? 'It is in hand: open another one first.' : undefined}
            onClick={() => !inHand && remove()}
          >
            Delete …
          </button>
          {inHand && <p className="hint">What is in hand can be deleted once another one is open.</p>}
        </fieldset>
      )}
    </li>
  );
}
