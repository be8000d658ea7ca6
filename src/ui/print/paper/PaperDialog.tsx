import { Fragment, useEffect, useId, useRef } from 'react';
import { useServices } from '../../services';
import { useFileWork } from '../../useFileWork';
import { useStore } from '../../useStore';
import { useBench, useBenchState } from '../proof/useBench';
import { holdsBack } from './cautionsOf';
import { Mends } from './PaperCautions';

/** Asks before pages are downloaded while paper, printer and pages do not go together; nothing while no download waits. */
export function PaperDialog() {
  const bench = useBench();
  const state = useBenchState(bench);
  return state.download === 'asked' ? <Asking /> : null;
}

function Asking() {
  const bench = useBench();
  const state = useBenchState(bench);
  const device = useStore((all) => all.device);
  const work = useFileWork();
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const { getState } = useServices().store;
  const cautions = holdsBack(device, state);
  useEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  const download = (): void => {
    bench.setDownload('wanted');
    void work.downloadPdf();
  };
  /** Downloads as soon as nothing is left to mend. */
  const mended = (): void => {
    if (holdsBack(getState().device, bench.getState()).length === 0) download();
  };
  const closed = (): void => {
    if (bench.getState().download === 'asked') bench.setDownload('free');
  };
  return (
    <dialog ref={dialog} aria-labelledby={title} className="new-dialog" onClose={closed}>
      <div className="paper-asking">
        <h2 id={title}>Not downloaded yet: the paper does not match</h2>
        {cautions.map((caution) => (
          <Fragment key={caution.code}>
            <p>{caution.message}</p>
            <Mends caution={caution} done={mended} />
          </Fragment>
        ))}
        <button type="button" onClick={download}>
          Download all the same
        </button>
        <button type="button" className="plain-button" onClick={closed}>
          Cancel
        </button>
      </div>
    </dialog>
  );
}
