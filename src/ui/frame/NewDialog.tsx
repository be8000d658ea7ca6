import { type RefObject, useId } from 'react';
import { KINDS } from '../../core/kinds/kinds';
import { DEMO } from '../demoOrKind';

interface NewDialogProps {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly begin: (kind: string) => void;
}

/** What to start from. Undo brings the work in hand back. */
export function NewDialog({ dialog, begin }: NewDialogProps) {
  const title = useId();
  return (
    <dialog ref={dialog} aria-labelledby={title} className="new-dialog">
      <form method="dialog">
        <h2 id={title}>Begin a new instrument</h2>
        <p className="hint">Measuring beats every figure that these start with. Undo brings the present work back.</p>
        {[...KINDS, DEMO].map(({ id, name }) => (
          <button key={id} type="submit" onClick={() => begin(id)}>
            {name}
          </button>
        ))}
        <button type="submit" className="plain-button">
          Cancel
        </button>
      </form>
    </dialog>
  );
}
