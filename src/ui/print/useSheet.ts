import { useMemo } from 'react';
import { fail, type Result } from '../../core/result';
import { PAPERS } from '../../core/sheets/papers';
import { tapeDownTemplate } from '../../core/sheets/tapeDownTemplate';
import type { SheetDocument } from '../../core/sheets/types';
import { lengthStyle } from '../../store/device';
import type { AppState } from '../../store/types';
import { useServices } from '../services';
import { useStore } from '../useStore';

/** The template of what is in hand, for the paper in the printer. */
export const makeSheet = (
  { project, derived, device }: Pick<AppState, 'project' | 'derived' | 'device'>,
  date: string,
): Result<SheetDocument> => {
  const paper = PAPERS.find(({ id }) => id === device.paper) ?? PAPERS[0];
  if (paper === undefined) return fail('paper', 'paper.unknown', 'Choose a paper to print on.');
  return tapeDownTemplate(project, derived, { paper, style: lengthStyle(device), date });
};

/** The template, laid out anew when something on it changed. */
export const useSheet = (): Result<SheetDocument> => {
  const { clock } = useServices();
  const project = useStore((state) => state.project);
  const derived = useStore((state) => state.derived);
  const device = useStore((state) => state.device);
  const date = clock.today();
  return useMemo(() => makeSheet({ project, derived, device }, date), [project, derived, device, date]);
};
