import { useMemo } from 'react';
import { type PrintSettings, readPrintSettings } from '../../core/sheets/printSettings';
import { useServices } from '../services';
import { useStore } from '../useStore';

/** What this device knows of papers and printer, and how it is changed. */
export const usePrintSettings = (): readonly [PrintSettings, (settings: PrintSettings) => void] => {
  const { actions } = useServices().store;
  const kept = useStore((state) => state.device.print);
  const settings = useMemo(() => readPrintSettings(kept), [kept]);
  return [settings, (print) => actions.setDevice({ print })];
};
