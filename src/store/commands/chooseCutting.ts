import type { Project } from '../../core/document/types';
import { ok, type Result } from '../../core/result';
import { MM_PER_INCH } from '../../core/units/mmPerInch';

/** A cutter and a base to begin with; sources stand beside the fields. */
const USUAL = { cutter: MM_PER_INCH / 8, base: 3 * MM_PER_INCH } as const;

/** Fence settings for a slot that is cut in place, or none. A cutter wider than the slot is not offered to begin with. */
export const chooseCutting = (project: Project, wanted: boolean): Result<Project> => {
  const { cutting, slot } = project.bridge;
  const usual = { ...USUAL, cutter: Math.min(USUAL.cutter, slot.width) };
  return ok({ ...project, bridge: { ...project.bridge, cutting: wanted ? (cutting ?? usual) : null } });
};
