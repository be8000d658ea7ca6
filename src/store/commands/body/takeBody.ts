import { bodyFields } from '../../../core/document/bodyFields';
import type { Body } from '../../../core/document/bodyTypes';
import { fieldValue } from '../../../core/document/fieldValue';
import type { Project } from '../../../core/document/types';
import { validateField } from '../../../core/document/validateField';
import { failed, ok, type Result } from '../../../core/result';

/** The project with this body, if every figure of it may stand in its field. Codes: those of validateField. */
export const takeBody = (project: Project, body: Body): Result<Project> => {
  const after = { ...project, body };
  const issues = bodyFields(after).flatMap((field) => validateField(field, fieldValue(after, field.path)));
  return issues.length > 0 ? failed(issues) : ok(after);
};
