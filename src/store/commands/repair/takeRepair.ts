import { fieldValue } from '../../../core/document/fieldValue';
import { repairFields } from '../../../core/document/repairFields';
import type { Repair } from '../../../core/document/repairTypes';
import type { Project } from '../../../core/document/types';
import { validateField } from '../../../core/document/validateField';
import { failed, ok, type Result } from '../../../core/result';

/** The project with this old bridge, if every figure of it may stand in its field. Codes: those of validateField. */
export const takeRepair = (project: Project, repair: Repair): Result<Project> => {
  const after = { ...project, repair };
  const issues = repairFields(after).flatMap((field) => validateField(field, fieldValue(after, field.path)));
  return issues.length > 0 ? failed(issues) : ok(after);
};
