import { usualParameters } from '../../../core/document/shapeParameters';
import type { Project, ShapeName } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { withRepair } from './withRepair';

/** An old footprint of this shape with its usual dimensions, where it lay. Codes: repair.none. */
export const chooseFormerShape = (project: Project, shape: ShapeName): Result<Project> =>
  withRepair(project, (repair) => {
    const outline = { shape, parameters: usualParameters(shape) };
    return ok({ ...repair, footprint: { ...repair.footprint, outline } });
  });
