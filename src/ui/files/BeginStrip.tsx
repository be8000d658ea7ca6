import { useEffect, useRef, useState } from 'react';
import { useServices } from '../services';
import { useFileWork } from '../useFileWork';
import { useStore } from '../useStore';
import { NewDialog } from './NewDialog';
import './begin.css';

/** How one's own instrument begins, along the foot of a first start; gone for good once it is closed or another work begins. */
export function BeginStrip() {
  const { actions } = useServices().store;
  const work = useFileWork();
  const begun = useStore((state) => state.device.begun);
  const id = useStore((state) => state.project.id);
  const name = useStore((state) => state.project.about.name);
  /** A maker who is at work does not need it. */
  const atWork = useStore((state) => state.history.past.length > 0);
  const first = useRef(id);
  const [choosing, setChoosing] = useState(false);
  useEffect(() => {
    if (!begun && !choosing && (atWork || id !== first.current)) actions.setDevice({ begun: true });
  }, [actions, atWork, begun, choosing, id]);
  if (begun) return null;
  return (
    <aside className="begin-strip" aria-label="How to begin">
      <p>{name} is a demo. Your own:</p>
      <ol>
        <li>choose its kind</li>
        <li>type nut to 12th fret</li>
        <li>choose its bridge and print</li>
      </ol>
      <button type="button" className="primary" onClick={() => setChoosing(true)}>
        Begin my own
      </button>
      <button type="button" aria-label="Close how to begin" onClick={() => actions.setDevice({ begun: true })}>
        Close
      </button>
      {choosing && <NewDialog begin={work.begin} closed={() => setChoosing(false)} />}
    </aside>
  );
}
