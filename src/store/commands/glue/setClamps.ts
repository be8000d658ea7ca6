import { clampFields } from '../../../core/document/glueFields';
import { MOST_CLAMPS } from '../../../core/document/mostOfBuild';
import type { Project } from '../../../core/document/types';
import { validateField } from '../../../core/document/validateField';
import type { Point } from '../../../core/geom/types';
import { newGlue } from '../../../core/glue/newGlue';
import { fail, failed, ok, type Result } from '../../../core/result';
import { withBuild } from '../place/withBuild';

/**
 * Clamps in these places, footprint frame, in order of tightening; null: as proposed. Codes: glue.clamps when there are none
 * or too many, those of validateField.
 */
export const setClamps = (project: Project, clamps: readonly Point[] | null): Result<Project> => {
  if (clamps !== null && (clamps.length === 0 || clamps.length > MOST_CLAMPS))
    return fail('build.glue.clamps', 'glue.clamps', `Expected 1 to ${MOST_CLAMPS} clamps.`);
  const issues = (clamps ?? []).flatMap(({ x, y }, index) =>
    clampFields(index).flatMap((field) => validateField(field, field.path.endsWith('.x') ? x : y)),
  );
  if (issues.length > 0) return failed(issues);
  return withBuild(project, (build) => ok({ ...build, glue: { ...(build.glue ?? newGlue()), clamps } }));
};
