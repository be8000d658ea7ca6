import { footprintOf } from '../../core/bridge/footprintOf';
import { freeLocatingPoints } from '../../core/bridge/locatingHoles';
import type { Locating, Project } from '../../core/document/types';
import { ok, type Result } from '../../core/result';

/** Where the locating pins go. Free points begin well inside the wings, and are kept from one choice to the next. */
export const chooseSite = (project: Project, site: Locating['site']): Result<Project> => {
  const { bridge } = project;
  const kept = bridge.locating.points;
  if (site !== 'free' || kept !== null)
    return ok({ ...project, bridge: { ...bridge, locating: { ...bridge.locating, site } } });
  const footprint = footprintOf(bridge.outline);
  if (!footprint.ok) return footprint;
  const points = freeLocatingPoints(footprint.value.outline);
  return ok({ ...project, bridge: { ...bridge, locating: { ...bridge.locating, site, points } } });
};
