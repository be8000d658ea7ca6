import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { footprintFrom } from '../../../core/repair/fromBridge';
import { ok, type Result } from '../../../core/result';
import { takeRepair } from './takeRepair';

/**
 * Work on an instrument that had a bridge, which starts as the one drawn now and where it stands, or new work. Codes: those
 * of the bridge in place when it could not be computed, and of takeRepair.
 */
export const chooseRepair = (project: Project, wanted: boolean): Result<Project> => {
  if (!wanted) return ok({ ...project, repair: null });
  const { bridge } = createDerive()(project);
  if (!bridge.ok) return bridge;
  const { holes, slot } = project.repair ?? { holes: null, slot: null };
  return takeRepair(project, { footprint: footprintFrom(project.bridge, bridge.value), holes, slot });
};
