import { useMemo } from 'react';
import type { Result } from '../../core/result';
import { type MadeSheets, makeSheets } from '../../core/sheets/makeSheets';
import { paperOf, papersOf, readPrintSettings } from '../../core/sheets/printSettings';
import { benchOf } from '../../store/bench/benchOf';
import { chosenFor } from '../../store/bench/createBench';
import type { KeptBench } from '../../store/bench/readBench';
import { lengthStyle } from '../../store/device';
import type { AppState, Device, DeviceMemory } from '../../store/types';
import { useServices } from '../services';
import { useStore } from '../useStore';
import { holdsBack } from './paper/cautionsOf';
import { useBench, useBenchState } from './proof/useBench';

type Printed = Pick<AppState, 'project' | 'derived' | 'areas' | 'around' | 'device'>;

/**
 * The chosen sheets of what is in hand, for the paper in the printer, corrected by what the maker prints with. date: ISO, the
 * day of issue.
 */
export const makeSheet = (
  { project, derived, areas, around, device }: Printed,
  date: string,
  bench: Pick<KeptBench, 'profiles' | 'chosen'>,
): Result<MadeSheets> => {
  const settings = readPrintSettings(device.print);
  const paper = paperOf(settings, device.paper);
  const known = areas?.ok === true ? areas.value : null;
  const context = { project, derived, areas: known, around, style: lengthStyle(device), date };
  return makeSheets(project.sheets.chosen, paper, context, chosenFor(bench, paper.id), papersOf(settings).first);
};

/** What this maker's bench holds now. */
export const benchNow = (memory: DeviceMemory): Pick<KeptBench, 'profiles' | 'chosen'> => benchOf(memory).getState();

/**
 * Whether a download may go on: it is held back, and the maker asked at Print, while paper, printer and pages do not go
 * together, unless they want it all the same.
 */
export const letGo = (device: Device, memory: DeviceMemory): boolean => {
  const bench = benchOf(memory);
  const state = bench.getState();
  const held = state.download !== 'wanted' && holdsBack(device, state).length > 0;
  bench.setDownload(held ? 'asked' : 'free');
  return !held;
};

/** The sheets, laid out anew when something on them changed. */
export const useSheet = (): Result<MadeSheets> => {
  const { clock } = useServices();
  const project = useStore((state) => state.project);
  const derived = useStore((state) => state.derived);
  const areas = useStore((state) => state.areas);
  const around = useStore((state) => state.around);
  const device = useStore((state) => state.device);
  const { profiles, chosen } = useBenchState(useBench());
  const date = clock.today();
  return useMemo(
    () => makeSheet({ project, derived, areas, around, device }, date, { profiles, chosen }),
    [project, derived, areas, around, device, date, profiles, chosen],
  );
};
