import type { Field } from '../../core/document/fieldTypes';
import { type FieldValue, fieldValue, hasGroup, withFieldValue } from '../../core/document/fieldValue';
import { MOST_READINGS, readingOfPath } from '../../core/document/readingFields';
import { usualParameters } from '../../core/document/shapeParameters';
import type { Project, ShapeName } from '../../core/document/types';
import { validateField } from '../../core/document/validateField';
import { fail, failed, ok, type Result } from '../../core/result';

/** What to change, null when there is no such field; show writes a length for a message, in mm when absent. */
export interface SetField {
  readonly field: Field | null;
  readonly value: FieldValue;
  readonly show?: (mm: number) => string;
}

/** A shape has its own dimensions, whatever the outline before had: the bridge's, or the old bridge's. */
const withShape = (project: Project, path: string, shape: ShapeName): Project => {
  const { bridge, repair } = project;
  const outline = { shape, parameters: usualParameters(shape) };
  return path.startsWith('repair.') && repair !== null
    ? { ...project, repair: { ...repair, footprint: { ...repair.footprint, outline } } }
    : { ...project, bridge: { ...bridge, outline } };
};

/**
 * Another value in one field, if its own row of the table allows it. Codes: field.unknown when this project has no such
 * field (pins on a bridge without), field.full, else those of `validateField`.
 */
export const setField = (project: Project, { field, value, show }: SetField): Result<Project> => {
  if (field === null || !hasGroup(project, field.path))
    return fail(field?.path ?? '', 'field.unknown', 'This instrument has no such measure.');
  const { path } = field;
  const { readings } = project.instrument.scale;
  if (readingOfPath(path) !== null && fieldValue(project, path) === null && readings.length >= MOST_READINGS)
    return fail(path, 'field.full', `There is room for ${MOST_READINGS} readings in all; empty one first.`);
  const issues = validateField(field, value, show);
  if (issues.length > 0) return failed(issues);
  if (path.endsWith('.outline.shape')) return ok(withShape(project, path, value as ShapeName));
  return ok(withFieldValue(project, path, value));
};
