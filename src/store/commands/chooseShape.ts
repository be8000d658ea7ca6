import type { Project, ShapeName } from '../../core/document/types';
import { usualBridge } from '../../core/kinds/usualBridge';
import { ok, type Result } from '../../core/result';

/** A bridge shape with its usual dimensions. Width, ends and crown of the slot stay: they follow the saddle in hand. */
export const chooseShape = (project: Project, shape: ShapeName): Result<Project> => {
  const { width, ends, crown } = project.bridge.slot;
  const usual = usualBridge(shape);
  return ok({ ...project, bridge: { ...usual, slot: { ...usual.slot, width, ends, crown } } });
};
