import { useEffect, useId, useRef, useState } from 'react';
import type { Path } from '../../core/geom/types';
import type { DrawingScale } from '../../core/ports';
import type { Issue } from '../../core/result';
import { FileChoice } from './FileChoice';
import { FoundList } from './FoundList';
import { LayOutline } from './LayOutline';
import { ScaleFields } from './ScaleFields';
import { type Turn, turnedPath } from './turnedPath';
import { useReading } from './useReading';
import './import.css';

interface ImportDialogProps {
  /** What is done with the outline: mm, seen from the front with the nut up, y down. Answers with what is wrong with it. */
  readonly take: (path: Path) => readonly Issue[];
  readonly closed: () => void;
}

const AS_DRAWN: Turn = { quarters: 0, flipped: false };

/** Takes an outline out of an SVG or DXF file, open from the moment it is there. The work changes only when it is taken. */
export function ImportDialog({ take, closed }: ImportDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const reading = useReading();
  const [chosen, setChosen] = useState(0);
  const [turn, setTurn] = useState(AS_DRAWN);
  const [refused, setRefused] = useState<string | null>(null);
  /** Whether the size shown is the one that was last asked for. */
  const [sized, setSized] = useState(true);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  const { plain, found, busy, name } = reading;
  const outline = found?.outlines[chosen];
  const ready =
    found !== null && found.needs === null && outline !== undefined && outline.refusal === null && sized && !busy;
  const laid = outline && turnedPath(outline.path, turn);
  const open = (file: File): void => {
    setChosen(0);
    setTurn(AS_DRAWN);
    setRefused(null);
    setSized(true);
    reading.open(file);
  };
  const resize = async (scale: DrawingScale | null): Promise<string | null> => {
    setSized(false);
    if (scale === null) return null;
    setChosen(0);
    const wrong = await reading.resize(scale);
    setSized(wrong === null);
    return wrong;
  };
  const takeIt = (): void => {
    if (!ready || laid === undefined) return;
    const [issue] = take(laid);
    setRefused(issue?.message ?? null);
    if (issue === undefined) dialog.current?.close();
  };
  return (
    <dialog ref={dialog} aria-labelledby={title} className="new-dialog import-dialog" onClose={closed}>
      <h2 id={title}>Import an outline</h2>
      <FileChoice open={open} problem={reading.problem}>
        <p aria-live="polite" className="import-state">
          {busy && `Reading ${name} …`}
          {!busy && found !== null && `${name}: ${found.outlines.length + found.more} found.`}
        </p>
        {plain !== null && <ScaleFields key={reading.files} plain={plain} resize={resize} />}
        {found !== null && <FoundList found={found} chosen={chosen} choose={setChosen} />}
        {laid !== undefined && <LayOutline path={laid} turn={turn} lay={setTurn} />}
        <p role="alert" className={refused === null ? undefined : 'field-wrong'}>
          {refused}
        </p>
      </FileChoice>
      <div className="buttons import-end">
        {busy && (
          <button type="button" onClick={reading.cancel}>
            Stop reading
          </button>
        )}
        <button type="button" className="primary" aria-disabled={!ready} onClick={takeIt}>
          Take this outline
        </button>
        <button type="button" onClick={() => dialog.current?.close()}>
          Cancel
        </button>
      </div>
    </dialog>
  );
}
