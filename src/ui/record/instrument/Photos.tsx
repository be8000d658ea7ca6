import { useId, useRef, useState } from 'react';
import { MOST_PICTURES } from '../../../core/document/mostOfBuild';
import { useMedia } from '../../useMedia';
import { useStore } from '../../useStore';
import { PhotoDialog } from './PhotoDialog';
import { useAddPhotos } from './useAddPhotos';
import { usePictureAddress } from './usePictureAddress';

/** Photos of the model or instrument in hand: added by button, from the camera, or dropped here. */
export function Photos() {
  const pictures = useStore((state) => state.project.about.pictures);
  const { busy, problems, add } = useAddPhotos();
  const [open, setOpen] = useState<string | null>(null);
  const [over, setOver] = useState(false);
  const touch = useMedia('(pointer: coarse)');
  const chooser = useRef<HTMLInputElement>(null);
  const camera = useRef<HTMLInputElement>(null);
  const title = useId();
  const take = (input: HTMLInputElement): void => {
    void add([...(input.files ?? [])]);
    input.value = '';
  };
  const full = pictures.length >= MOST_PICTURES;
  return (
    <section
      className="photos"
      aria-labelledby={title}
      data-over={over}
      onDragOver={(event) => {
        if (!event.dataTransfer.types.includes('Files')) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void add([...event.dataTransfer.files]);
      }}
    >
      <h3 id={title}>Photos</h3>
      {pictures.length > 0 && (
        <ul>
          {pictures.map((id, index) => (
            <li key={id}>
              <Photo id={id} name={`Photo ${index + 1} of ${pictures.length}`} open={() => setOpen(id)} />
            </li>
          ))}
        </ul>
      )}
      {full ? (
        <p className="field-note">There is room for {MOST_PICTURES} photos: take one away to add another.</p>
      ) : (
        <div className="buttons">
          <button type="button" aria-disabled={busy} onClick={() => !busy && chooser.current?.click()}>
            {busy ? 'One moment …' : 'Add photos'}
          </button>
          {touch && (
            <button type="button" aria-disabled={busy} onClick={() => !busy && camera.current?.click()}>
              Take a photo
            </button>
          )}
        </div>
      )}
      <input ref={chooser} type="file" accept="image/*" multiple hidden onChange={({ target }) => take(target)} />
      <input
        ref={camera}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        onChange={({ target }) => take(target)}
      />
      <p className="field-note">
        {touch ? '' : 'Or drop them here. '}Kept small, without the place and time that the camera noted; saved files do
        not hold them, the file of the whole library does.
      </p>
      <div aria-live="polite">
        {problems.length > 0 && <p className="field-wrong">Not added. {problems.join(' ')}</p>}
      </div>
      {open !== null && pictures.includes(open) && (
        <PhotoDialog id={open} pictures={pictures} show={setOpen} closed={() => setOpen(null)} />
      )}
    </section>
  );
}

interface PhotoProps {
  readonly id: string;
  readonly name: string;
  readonly open: () => void;
}

/** A photo, small; a press shows it large. */
function Photo({ id, name, open }: PhotoProps) {
  const { address, problem } = usePictureAddress(id);
  return (
    <button type="button" className="photo" aria-label={`${name}, show it large`} onClick={open}>
      {address !== null && <img src={address} alt="" loading="lazy" />}
      {problem !== null && <span>not here</span>}
    </button>
  );
}
