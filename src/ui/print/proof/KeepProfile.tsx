import { useState } from 'react';
import { correctionBy, type PrinterProfile, profileFrom } from '../../../core/sheets/proof/printerProfile';
import type { PrintProof } from '../../../core/sheets/proof/provePrint';
import type { Page } from '../../../core/sheets/types';
import type { Bench } from '../../../store/bench/createBench';
import { TextBox } from '../../fields/TextBox';
import { useServices } from '../../services';

interface KeepProfileProps {
  readonly bench: Bench;
  readonly proof: PrintProof;
  readonly page: Pick<Page, 'width' | 'height'>;
  readonly paper: string;
  /** By which the print in hand was corrected. */
  readonly carried: PrinterProfile | null;
  /** Whether a reprint is advised, which only a setting that cannot be changed speaks against. */
  readonly against: boolean;
}

/** Keeps the factors under the printer's name. */
export function KeepProfile({ bench, proof, page, paper, carried, against }: KeepProfileProps) {
  const { store, newId, clock } = useServices();
  const [printer, setPrinter] = useState(carried?.printer ?? '');
  const [fixed, setFixed] = useState(false);
  const keep = (): void => {
    const made = profileFrom(proof, page, carried === null ? null : correctionBy(carried, page), {
      id: newId(),
      printer,
      paper,
      date: clock.today(),
      ...(against || carried?.againstAdvice === true ? { againstAdvice: true } : {}),
    });
    const kept = made.ok ? bench.keep(made.value) : made;
    if (kept.ok) store.actions.say(`Kept the factors of ${kept.value.printer} for this paper`);
    else store.actions.warn(kept.issues.map(({ message }) => message).join(' '));
  };
  return (
    <>
      {against && (
        <>
          <label className="check">
            <input type="checkbox" checked={fixed} onChange={(event) => setFixed(event.target.checked)} />
            <span>The setting cannot be changed: a copy shop, say</span>
          </label>
          <p className="quiet">
            Better is a print at 100 %. A setting that someone else turns back later makes these factors wrong without a
            word: read every print anew. Each page will say “kept against advice”.
          </p>
        </>
      )}
      <TextBox
        label="Printer"
        path="proof.printer"
        shown={printer}
        unit=""
        about="A name by which you know the printer. Its factors are kept on this device, one set for each paper."
        decimal={false}
        take={(text) => {
          setPrinter(text.trim());
          return null;
        }}
      />
      <button type="button" disabled={printer === '' || (against && !fixed)} onClick={keep}>
        {against
          ? 'Keep them against advice'
          : carried === null
            ? 'Keep these factors'
            : 'Keep them on top of the correction'}
      </button>
    </>
  );
}
