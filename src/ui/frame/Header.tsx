import { lazy, Suspense, useState } from 'react';
import { RadioRow } from '../fields/RadioRow';
import type { FileWork } from '../files/fileWork';
import { useServices } from '../services';
import { useStore } from '../useStore';

const NewDialog = lazy(async () => ({ default: (await import('../files/NewDialog')).NewDialog }));

const HANDS = [
  { value: 'right', label: 'Right' },
  { value: 'left', label: 'Left' },
] as const;
const UNITS = [
  { value: 'mm', label: 'mm' },
  { value: 'in', label: 'in' },
] as const;

/** The name of the work, and what can be done with all of it. */
export function Header({ work }: { readonly work: FileWork }) {
  const { actions } = useServices().store;
  const [beginning, setBeginning] = useState(false);
  const { past, future } = useStore((state) => state.history);
  const { about, instrument } = useStore((state) => state.project);
  const saved = useStore((state) => state.saved === state.project);
  const units = useStore((state) => state.device.units);
  const [back, forward] = [past.at(-1), future.at(-1)];
  return (
    <header className="header">
      <h1>Saddlemark</h1>
      <p className="work-name">
        <strong>{about.name === '' ? 'Unnamed' : about.name}</strong>
        <span className="quiet">{saved ? 'saved to a file' : 'not saved to a file'}</span>
      </p>
      <div className="buttons">
        <button type="button" onClick={() => setBeginning(true)}>
          New
        </button>
        <button type="button" onClick={work.open}>
          Open
        </button>
        <button type="button" onClick={work.save}>
          Save
        </button>
      </div>
      <div className="buttons">
        <button
          type="button"
          aria-disabled={back === undefined}
          title={back === undefined ? 'Nothing to undo' : `Undo: ${back.label}`}
          onClick={actions.undo}
        >
          Undo
        </button>
        <button
          type="button"
          aria-disabled={forward === undefined}
          title={forward === undefined ? 'Nothing to redo' : `Redo: ${forward.label}`}
          onClick={actions.redo}
        >
          Redo
        </button>
      </div>
      <RadioRow label="Hand" value={instrument.hand} choices={HANDS} choose={actions.setHand} />
      <RadioRow label="Units" value={units} choices={UNITS} choose={(chosen) => actions.setDevice({ units: chosen })} />
      <button
        type="button"
        className="primary"
        onPointerEnter={work.preparePdf}
        onFocus={work.preparePdf}
        onClick={work.downloadPdf}
      >
        Download PDF
      </button>
      {beginning && (
        <Suspense fallback={null}>
          <NewDialog begin={work.begin} closed={() => setBeginning(false)} />
        </Suspense>
      )}
    </header>
  );
}
