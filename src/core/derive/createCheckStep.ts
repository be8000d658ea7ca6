import { designChecks } from '../checks/designChecks';
import type { DesignCheck } from '../checks/types';
import { wallLimitsInUse } from '../checks/wallLimits';
import type { Project } from '../document/types';
import { remember } from './remember';
import type { Derived } from './types';

/** The design checks of a project, remembered while nothing that they look at changes. */
export const createCheckStep = (): ((project: Project, derived: Derived) => readonly DesignCheck[]) => {
  const limitsStep = remember(wallLimitsInUse);
  const step = remember(
    (project: Project, { scale, board, strings, models, saddle, slot, bridge }: Derived): readonly DesignCheck[] =>
      designChecks({
        project,
        scale,
        board,
        strings,
        models,
        saddle,
        slot,
        bridge,
        limits: limitsStep(project.limits),
      }),
  );
  return step;
};
