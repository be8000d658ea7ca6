import type { Repair } from '../../../core/document/repairTypes';
import type { Project } from '../../../core/document/types';
import { fail, type Result } from '../../../core/result';
import { takeRepair } from './takeRepair';

/**
 * The project with its old bridge changed. Codes: repair.none when none is spoken of, those of `change`, and those of
 * validateField for figures that have no room in their fields.
 */
export const withRepair = (project: Project, change: (repair: Repair) => Result<Repair>): Result<Project> => {
  if (project.repair === null) return fail('repair', 'repair.none', 'Expected a bridge that was here before.');
  const repair = change(project.repair);
  return repair.ok ? takeRepair(project, repair.value) : repair;
};
