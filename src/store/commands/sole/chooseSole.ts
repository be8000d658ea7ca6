import { footprintOf } from '../../../core/bridge/footprintOf';
import type { Project } from '../../../core/document/types';
import { pathBounds } from '../../../core/geom/pathBounds';
import { usualSole } from '../../../core/height/sole/usualSole';
import { ok, type Result } from '../../../core/result';

/** A bridge whose sole and top are spoken of, with what is usual to begin with, or without. Codes: those of footprintOf. */
export const chooseSole = (project: Project, wanted: boolean): Result<Project> => {
  const { bridge } = project;
  if (!wanted) return ok({ ...project, bridge: { ...bridge, sole: null } });
  const footprint = footprintOf(bridge.outline);
  if (!footprint.ok) return footprint;
  const { minX, maxX } = pathBounds(footprint.value.outline);
  return ok({ ...project, bridge: { ...bridge, sole: bridge.sole ?? usualSole(project, Math.min(-minX, maxX)) } });
};
