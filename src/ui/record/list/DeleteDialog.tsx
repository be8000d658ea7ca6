import { useEffect, useId, useRef, useState } from 'react';
import type { LibraryEntry } from '../../../core/ports';
import { useServices } from '../../services';
import { counted } from '../counted';
import { entryTitle } from './entryWords';

interface DeleteDialogProps {
  readonly entry: LibraryEntry;
  /** How many were made from it and stay. */
  readonly made: number;
  readonly remove: () => void;
  readonly closed: () => void;
}

/** How many earlier states would go; null until they are counted. */
const useVersionCount = (id: string): number | null => {
  const { library } = useServices();
  const [count, setCount] = useState<number | null>(null);
  useEffect(() => {
    let gone = false;
    library()
      .then((of) => of.versions(id))
      .then(
        (found) => !gone && found.ok && setCount(found.value.length),
        () => {},
      );
    return () => {
      gone = true;
    };
  }, [id, library]);
  return count;
};

/** Asks before something is deleted for good. */
export function DeleteDialog({ entry, made, remove, closed }: DeleteDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const versions = useVersionCount(entry.id);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  const photos = entry.pictures.length;
  return (
    <dialog ref={dialog} aria-labelledby={title} className="new-dialog" onClose={closed}>
      <form method="dialog">
        <h2 id={title}>Delete {entryTitle(entry)}?</h2>
        <p>
          It goes for good, with {versions === null ? 'its earlier versions' : counted(versions, 'version', 'versions')}
          {photos > 0 && ` and ${counted(photos, 'photo', 'photos')}`}; Undo does not bring it back.
          {made > 0 && ` ${counted(made, 'other was', 'others were')} made from it: they stay.`}
        </p>
        <p className="hint">
          To have it out of the way and keep it, archive it. To have it elsewhere, save it to a file first.
        </p>
        <button type="submit" className="plain-button">
          Keep it
        </button>
        <button type="submit" className="danger" onClick={remove}>
          Delete {entryTitle(entry)}
        </button>
      </form>
    </dialog>
  );
}
