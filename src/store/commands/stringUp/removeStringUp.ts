import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from '../place/withBuild';

/** One string-up fewer. Code: stringUp.unknown. */
export const removeStringUp = (project: Project, id: string): Result<Project> => {
  if (project.build?.stringUps.some((each) => each.id === id) !== true)
    return fail('build.stringUps', 'stringUp.unknown', 'There is no such string-up.');
  return withBuild(project, (build) => ok({ ...build, stringUps: build.stringUps.filter((each) => each.id !== id) }));
};
