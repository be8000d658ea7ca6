import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** The project as an earlier state of it was. Code: version.other. */
export const restoreVersion = (project: Project, version: Project): Result<Project> => {
  if (version.id !== project.id)
    return fail('', 'version.other', 'Expected an earlier state of the project in hand, got one of another project.');
  const { created, parent } = project.about;
  return ok({ ...version, revision: project.revision, about: { ...version.about, created, parent } });
};
