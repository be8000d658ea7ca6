import type { Field } from '../../../core/document/fieldTypes';
import type { FieldValue } from '../../../core/document/fieldValue';
import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { withBuild } from '../place/withBuild';
import { setField } from '../setField';
import { beginGroup } from './beginGroup';

/** Another value in a field of glue, air or grain; begins what holds it. Codes: those of setField. */
export const setGlueField = (project: Project, field: Field, value: FieldValue): Result<Project> => {
  const begun = withBuild(project, (build) => ok(beginGroup(build, field.path)));
  return begun.ok ? setField(begun.value, { field, value }) : begun;
};
