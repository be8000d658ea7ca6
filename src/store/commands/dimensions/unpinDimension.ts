import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** A dimension taken off the drawing. Codes: dimensions.none when there is none of that name. */
export const unpinDimension = (project: Project, id: string): Result<Project> => {
  const dimensions = project.dimensions.filter((each) => each.id !== id);
  if (dimensions.length === project.dimensions.length)
    return fail('dimensions', 'dimensions.none', 'That dimension is no longer there.');
  return ok({ ...project, dimensions });
};
