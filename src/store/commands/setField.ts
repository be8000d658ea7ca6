import { fieldAt } from '../../core/document/fieldAt';
import { type FieldValue, withFieldValue } from '../../core/document/fieldValue';
import type { Project } from '../../core/document/types';
import { validateField } from '../../core/document/validateField';
import { fail, failed, ok, type Result } from '../../core/result';

/** What to change; show writes a length for a message, in mm when absent. */
export interface SetField {
  readonly path: string;
  readonly value: FieldValue;
  readonly show?: (mm: number) => string;
}

/**
 * Another value in one field, if its own row of the table allows it. Codes: field.unknown when this project has no such
 * field (pins on a bridge without), else those of `validateField`.
 */
export const setField = (project: Project, { path, value, show }: SetField): Result<Project> => {
  const field = fieldAt(project, path);
  const absent = path.startsWith('bridge.pins.') && project.bridge.pins === null;
  if (field === null || absent) return fail(path, 'field.unknown', 'This instrument has no such measure.');
  const issues = validateField(field, value, show);
  return issues.length > 0 ? failed(issues) : ok(withFieldValue(project, path, value));
};
