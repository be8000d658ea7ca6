import { useMemo } from 'react';
import { paperOf, readPrintSettings } from '../../core/sheets/printSettings';
import type { PrinterProfile } from '../../core/sheets/proof/printerProfile';
import type { Paper } from '../../core/sheets/types';
import { chosenFor } from '../../store/bench/createBench';
import { useStore } from '../useStore';
import { useBench, useBenchState } from './proof/useBench';

/** What the pages are laid for. */
export interface Printing {
  readonly paper: Paper;
  /** The printer that the pages are corrected for, by the maker's choice; null for none. */
  readonly profile: PrinterProfile | null;
}

/** The paper in the printer, and the printer that the pages are corrected for. */
export const usePrinting = (): Printing => {
  const bench = useBenchState(useBench());
  const print = useStore((state) => state.device.print);
  const id = useStore((state) => state.device.paper);
  const paper = useMemo(() => paperOf(readPrintSettings(print), id), [print, id]);
  const profile = chosenFor(bench, paper.id);
  return useMemo(() => ({ paper, profile }), [paper, profile]);
};
