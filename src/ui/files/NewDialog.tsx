import { useEffect, useId, useRef } from 'react';
import { KINDS } from '../../core/kinds/kinds';
import { useServices } from '../services';
import { DEMO } from './demoOrKind';

interface NewDialogProps {
  readonly begin: (kind: string) => void;
  readonly closed: () => void;
}

/** What to start from, open from the moment it is there. Undo brings the work in hand back. */
export function NewDialog({ begin, closed }: NewDialogProps) {
  const { actions } = useServices().store;
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog ref={dialog} aria-labelledby={title} className="new-dialog" onClose={closed}>
      <form method="dialog">
        <h2 id={title}>Begin a new instrument</h2>
        <p className="hint">
          Where no field names a source, their figures are from memory: measuring beats them all. The present work stays
          in the library, and Undo brings it back.
        </p>
        <div className="kinds">
          {[...KINDS, DEMO].map(({ id, name }) => (
            <button key={id} type="submit" onClick={() => begin(id)}>
              {name}
            </button>
          ))}
        </div>
        <button type="submit" onClick={() => actions.setDevice({ station: 'record' })}>
          From a model of the library …
        </button>
        <p className="hint">
          All with a bridge that is glued to the top. A floating bridge, held by the strings alone, is outside this
          tool.
        </p>
        <button type="submit" className="plain-button">
          Cancel
        </button>
      </form>
    </dialog>
  );
}
