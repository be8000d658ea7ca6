import { useMemo } from 'react';
import { nextStep } from '../../../core/run/nextStep';
import { runCase } from '../../../core/run/runCase';
import { runSteps } from '../../../core/run/runSteps';
import type { RunStep } from '../../../core/run/types';
import { stepRows } from '../../../core/sheets/parts/worksheet/stepRows';
import type { RowsByStep } from '../../../core/sheets/parts/worksheet/worksheetRows';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

interface Run {
  readonly steps: readonly RunStep[];
  /** Instants by the step's id. */
  readonly ticked: Readonly<Record<string, string>>;
  /** Null when all are done. */
  readonly next: RunStep | null;
  readonly done: number;
  /** Figures to expect, as on the printed worksheet; none while the placement is not known. */
  readonly rows: RowsByStep;
}

const NONE: Readonly<Record<string, string>> = {};

/** The run of this project's work, and how far it has come. */
export const useRun = (): Run => {
  const { clock } = useServices();
  const project = useStore((state) => state.project);
  const derived = useStore((state) => state.derived);
  const around = useStore((state) => state.around);
  const areas = useStore((state) => state.areas);
  const { style } = useLengths();
  const date = clock.today();
  return useMemo(() => {
    const { bridge, placement } = derived;
    const holes = bridge.ok ? bridge.value.locating.length : 0;
    const steps = runSteps(runCase(project, holes));
    const ticked = project.build?.steps ?? NONE;
    const context = { project, derived, around, areas: areas?.ok === true ? areas.value : null, style, date };
    return {
      steps,
      ticked,
      next: nextStep(steps, ticked),
      done: steps.filter(({ id }) => ticked[id] !== undefined).length,
      rows: placement.ok && bridge.ok ? stepRows(context, placement.value, holes) : {},
    };
  }, [project, derived, around, areas, style, date]);
};
