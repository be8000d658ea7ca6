import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { slotFrom } from '../../../core/repair/fromBridge';
import { failed, ok, type Result } from '../../../core/result';
import { withRepair } from './withRepair';

/**
 * A bridge that stays and whose slot is filled, which starts as the one drawn now; or none. Codes: repair.none, and those of
 * the bridge in place when it could not be computed.
 */
export const chooseFormerSlot = (project: Project, wanted: boolean): Result<Project> =>
  withRepair(project, (repair) => {
    if (!wanted) return ok({ ...repair, slot: null });
    const { bridge, slot, saddle } = createDerive()(project);
    if (!bridge.ok || !slot.ok || !saddle.ok)
      return failed([bridge, slot, saddle].flatMap((part) => (part.ok ? [] : part.issues)));
    return ok({ ...repair, slot: repair.slot ?? slotFrom(project.bridge, bridge.value, slot.value, saddle.value) });
  });
