import { useEffect, useState } from 'react';
import type { Autosave, KeepState } from '../../core/ports';
import { fileName } from '../files/fileName';
import { useServices } from '../services';
import { useStore } from '../useStore';
import { useHandedFiles } from './useHandedFiles';
import './keepLine.css';

/** Whether the work in hand is kept in this browser, and what to do when it is not. */
export function KeepLine() {
  useHandedFiles();
  const { autosave, library, files, store } = useServices();
  const zoom = useStore((state) => state.zoom > 0 || state.device.station !== 'measure');
  const [keeper, setKeeper] = useState<Autosave | null>(null);
  const [state, setState] = useState<KeepState | null>(null);
  // The drawing comes first.
  useEffect(() => {
    if (!zoom) return;
    let stop = (): void => {};
    let gone = false;
    autosave().then(
      (found) => {
        if (gone) return;
        setKeeper(found);
        setState(found.state());
        stop = found.subscribe(() => setState(found.state()));
      },
      () => setState({ kind: 'not-kept', code: 'library.closed', reason: 'Save your work to a file.' }),
    );
    return () => {
      gone = true;
      stop();
    };
  }, [autosave, zoom]);
  if (state === null) return null;

  const downloadText = async (id: string): Promise<void> => {
    const text = await (await library()).textOf(id);
    if (text.ok)
      files.download(fileName('unreadable', '', 'json'), 'application/json', new TextEncoder().encode(text.value));
    else store.actions.warn(text.issues[0]?.message ?? '');
  };
  switch (state.kind) {
    case 'kept':
      return state.at === null ? null : (
        <p className="keep-line">Kept on this device, {new Date(state.at).toLocaleTimeString('en-GB').slice(0, 5)}</p>
      );
    case 'keeping':
      return <p className="keep-line">Keeping …</p>;
    case 'not-kept':
      return (
        <div className="keep-line" data-trouble="">
          <p role="alert">Not kept: {state.reason} You can go on working.</p>
          <button type="button" onClick={() => keeper?.retry()}>
            Try again
          </button>
        </div>
      );
    case 'conflict':
      return (
        <div className="keep-line" data-trouble="">
          <p role="alert">Another tab changed “{state.other.name}”. Nothing of either is lost: choose.</p>
          <button type="button" onClick={() => keeper?.keepBoth()}>
            Keep both
          </button>
          <button type="button" onClick={() => keeper?.takeOther()}>
            Take the other tab’s
          </button>
        </div>
      );
    case 'unreadable':
      return (
        <div className="keep-line" data-trouble="">
          <p role="alert">What you last had in hand could not be opened: {state.reason} It is kept as it is.</p>
          <button type="button" onClick={() => downloadText(state.id)}>
            Download its text
          </button>
          <button type="button" onClick={() => keeper?.leaveUnread()}>
            Go on with this one
          </button>
        </div>
      );
  }
}
