import { useMemo } from 'react';
import { fail, type Result } from '../../core/result';
import { type MadeSheets, makeSheets } from '../../core/sheets/makeSheets';
import { PAPERS } from '../../core/sheets/papers';
import { lengthStyle } from '../../store/device';
import type { AppState } from '../../store/types';
import { useServices } from '../services';
import { useStore } from '../useStore';

type Printed = Pick<AppState, 'project' | 'derived' | 'areas' | 'around' | 'device'>;

/** The chosen sheets of what is in hand, for the paper in the printer. date: ISO, the day of issue. */
export const makeSheet = ({ project, derived, areas, around, device }: Printed, date: string): Result<MadeSheets> => {
  const paper = PAPERS.find(({ id }) => id === device.paper) ?? PAPERS[0];
  if (paper === undefined) return fail('paper', 'paper.unknown', 'Choose a paper to print on.');
  const known = areas?.ok === true ? areas.value : null;
  const context = { project, derived, areas: known, around, style: lengthStyle(device), date };
  return makeSheets(project.sheets.chosen, paper, context);
};

/** The sheets, laid out anew when something on them changed. */
export const useSheet = (): Result<MadeSheets> => {
  const { clock } = useServices();
  const project = useStore((state) => state.project);
  const derived = useStore((state) => state.derived);
  const areas = useStore((state) => state.areas);
  const around = useStore((state) => state.around);
  const device = useStore((state) => state.device);
  const date = clock.today();
  return useMemo(
    () => makeSheet({ project, derived, areas, around, device }, date),
    [project, derived, areas, around, device, date],
  );
};
