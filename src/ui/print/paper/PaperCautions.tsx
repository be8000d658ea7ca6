import { useMemo } from 'react';
import type { PaperCaution } from '../../../core/sheets/paperCautions';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { useBench, useBenchState } from '../proof/useBench';
import { usePrintSettings } from '../usePrintSettings';
import { cautionsOf } from './cautionsOf';

/** What does not go with the paper that the pages are laid for, each with buttons that mend it. Nothing when all does. */
export function PaperCautions() {
  const state = useBenchState(useBench());
  const device = useStore((all) => all.device);
  const cautions = useMemo(() => cautionsOf(device, state), [device, state]);
  return (
    <div aria-live="polite">
      {cautions.map((caution) => (
        <section key={caution.code} className="verdict verdict-look paper-caution" aria-label="Paper does not match">
          <p>{caution.message}</p>
          <div className="buttons">
            <Mends caution={caution} />
          </div>
        </section>
      ))}
    </div>
  );
}

interface MendsProps {
  readonly caution: PaperCaution;
  /** Told when one of them was taken. */
  readonly done?: () => void;
}

/** The ways to mend what does not match. */
export function Mends({ caution: { code, paper, other }, done = () => {} }: MendsProps) {
  const { actions } = useServices().store;
  const bench = useBench();
  const [settings, set] = usePrintSettings();
  const lay = (): void => {
    actions.setDevice({ paper: other.id });
    done();
  };
  const mend = (): void => {
    if (code === 'paper.loaded') set({ ...settings, loaded: null });
    if (code === 'paper.profile') bench.choose(null);
    if (code === 'paper.proof') bench.clearReadings();
    done();
  };
  return (
    <>
      <button type="button" onClick={lay}>
        Lay the pages for {other.name}
      </button>
      <button type="button" onClick={mend}>
        {code === 'paper.loaded' ? `${paper.name} is in the printer now` : MEND[code]}
      </button>
    </>
  );
}

const MEND: Readonly<Record<Exclude<PaperCaution['code'], 'paper.loaded'>, string>> = {
  'paper.profile': 'Print without a correction',
  'paper.proof': 'Clear the readings',
};
