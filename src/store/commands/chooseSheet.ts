import type { Project } from '../../core/document/types';
import { ok, type Result } from '../../core/result';

/** A sheet to be printed, or not, by its id. */
export const chooseSheet = (project: Project, id: string, wanted: boolean): Result<Project> => {
  const others = project.sheets.chosen.filter((each) => each !== id);
  return ok({ ...project, sheets: { chosen: wanted ? [...others, id] : others } });
};
