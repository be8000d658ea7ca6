import { useEffect, useId, useRef } from 'react';
import { FieldPanel } from '../../fields/FieldPanel';
import { FieldRow } from '../../fields/FieldRow';
import { BlankView } from './BlankView';
import { LengthView } from './LengthView';
import { SectionView } from './SectionView';
import { SoleRows } from './SoleRows';
import { SoleTable } from './SoleTable';

/** The side views as large as the screen allows, with the fields beside them; open from the moment it is there. */
export function SideDialog({ closed }: { readonly closed: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog ref={dialog} aria-labelledby={title} className="side-dialog" onClose={closed}>
      <header>
        <h2 id={title}>Side view and saddle</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </header>
      <div className="side-fields">
        <FieldPanel>
          <FieldRow path="bridge.thickness" />
          <FieldRow path="bridge.slot.depth" />
          <FieldRow path="bridge.slot.length" />
          <FieldRow path="height.straightedge" usual="not read" />
          <FieldRow path="height.run" />
          <FieldRow path="setup.action.treble" />
          <FieldRow path="setup.action.bass" />
          <FieldRow path="instrument.boardRadius" usual="flat" />
          <SoleRows />
        </FieldPanel>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: pictures larger than the view are scrolled by keys */}
      <section className="side-views" aria-label="Side views" tabIndex={0}>
        <SectionView />
        <LengthView />
        <SoleTable />
        <BlankView />
      </section>
    </dialog>
  );
}
