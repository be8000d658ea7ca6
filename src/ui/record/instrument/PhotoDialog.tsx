import { useEffect, useId, useRef } from 'react';
import { movePicture } from '../../../store/commands/record/movePicture';
import { removePicture } from '../../../store/commands/record/removePicture';
import { useChange } from '../../draw/repair/useChange';
import { usePictureAddress } from './usePictureAddress';
import '../compare/compare.css';

interface PhotoDialogProps {
  readonly id: string;
  readonly pictures: readonly string[];
  readonly show: (id: string | null) => void;
  readonly closed: () => void;
}

/** One photo, large, and what can be done with it. */
export function PhotoDialog({ id, pictures, show, closed }: PhotoDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const change = useChange();
  const { address, problem } = usePictureAddress(id);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  const at = pictures.indexOf(id);
  const [before, after] = [pictures[at - 1], pictures[at + 1]];
  const name = `Photo ${at + 1} of ${pictures.length}`;
  const remove = (): void => {
    show(after ?? before ?? null);
    change('Photo taken away', (project) => removePicture(project, id));
  };
  return (
    <dialog ref={dialog} aria-labelledby={title} className="new-dialog photo-dialog" onClose={closed}>
      <form method="dialog">
        <div className="dialog-head">
          <h2 id={title}>{name}</h2>
          <button type="submit">Close</button>
        </div>
      </form>
      {address !== null && <img src={address} alt={name} />}
      {problem !== null && <p className="field-caution">{problem}</p>}
      <div className="buttons">
        <button type="button" aria-disabled={before === undefined} onClick={() => before && show(before)}>
          Photo before
        </button>
        <button type="button" aria-disabled={after === undefined} onClick={() => after && show(after)}>
          Next photo
        </button>
      </div>
      <div className="buttons">
        <button
          type="button"
          aria-disabled={before === undefined}
          onClick={() => before && change('Photo put earlier', (project) => movePicture(project, id, -1))}
        >
          Put it earlier
        </button>
        <button
          type="button"
          aria-disabled={after === undefined}
          onClick={() => after && change('Photo put later', (project) => movePicture(project, id, 1))}
        >
          Put it later
        </button>
        <button type="button" onClick={remove}>
          Take it away
        </button>
      </div>
    </dialog>
  );
}
