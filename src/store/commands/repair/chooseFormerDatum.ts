import type { FormerDatum } from '../../../core/document/repairTypes';
import type { Project } from '../../../core/document/types';
import { holesReadFrom, slotReadFrom } from '../../../core/repair/readFrom';
import { ok, type Result } from '../../../core/result';
import { withRepair } from './withRepair';

/** Old holes or old slot read from the other datum; they stay where they are. Codes: repair.none. */
export const chooseFormerDatum = (project: Project, of: 'holes' | 'slot', from: FormerDatum): Result<Project> =>
  withRepair(project, (repair) => {
    const { footprint, holes, slot } = repair;
    if (of === 'holes') return ok({ ...repair, holes: holes && holesReadFrom(holes, from, footprint) });
    return ok({ ...repair, slot: slot && slotReadFrom(slot, from, footprint) });
  });
