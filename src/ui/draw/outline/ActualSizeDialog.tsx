import { useEffect, useId, useRef, useState } from 'react';
import { SelectRow } from '../../fields/SelectRow';

/** Things that most makers have, and their lengths in mm. Cards: ISO/IEC 7810, ID-1, from memory. */
const THINGS = [
  { value: '85.6', label: 'A bank card, its long side (85.60 mm)' },
  { value: '53.98', label: 'A bank card, its short side (53.98 mm)' },
  { value: '50', label: '50 mm of a rule' },
  { value: '100', label: '100 mm of a rule' },
  { value: '50.8', label: '2 inches of a rule' },
] as const;

/** CSS pixels to a millimetre by definition, 96 to the inch: where the bar starts. */
const NOMINAL = 96 / 25.4;
/** What screens of telephones and old projectors lie between, CSS pixels to a millimetre. */
const RANGE = { least: 1.2, most: 20 } as const;

interface ActualSizeDialogProps {
  /** As it was set before; 0 for not yet. */
  readonly start: number;
  /** Pixels of the page to a millimetre. */
  readonly done: (pixelsPerMm: number) => void;
  readonly closed: () => void;
}

/** A thing of known length is held to the glass, and a bar is drawn out until it is as long. */
export function ActualSizeDialog({ start, done, closed }: ActualSizeDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [length, setLength] = useState<string>(THINGS[0].value);
  const [pixels, setPixels] = useState(start > 0 ? start : NOMINAL);
  const title = useId();
  const slider = useId();
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    shown?.querySelector('input')?.focus();
    return () => shown?.close();
  }, []);
  const wide = Number(length) * pixels;
  return (
    <dialog ref={dialog} aria-labelledby={title} className="actual-size" onClose={closed}>
      <form method="dialog">
        <h2 id={title}>Actual size on this screen</h2>
        <p className="hint">
          No screen says how large its dots are. Hold one of these to the glass and move the slider until the bar is as
          long. Arrow keys move it a little.
        </p>
        <SelectRow label="Held to the glass" value={length} choices={THINGS} choose={setLength} />
        <div className="size-bar" style={{ width: `${wide}px` }} aria-hidden="true" />
        <label htmlFor={slider}>Length of the bar</label>
        <input
          id={slider}
          type="range"
          min={RANGE.least * Number(length)}
          max={RANGE.most * Number(length)}
          step={0.25}
          value={wide}
          aria-valuetext={`${wide.toFixed(1)} pixels stand for ${length} mm`}
          onChange={(event) => setPixels(Number(event.target.value) / Number(length))}
        />
        <p className="hint">
          Glass is thick, eyes look aslant: what is on screen is for looking. Measure the bridge, or the paper.
        </p>
        <div className="dialog-buttons">
          <button type="submit" className="primary" onClick={() => done(pixels)}>
            The bar fits
          </button>
          <button type="submit">Cancel</button>
        </div>
      </form>
    </dialog>
  );
}
