import type { StringUp } from '../../../core/document/buildTypes';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from '../place/withBuild';

/** The project with one of its string-ups changed. Codes: stringUp.unknown, and those of `change`. */
export const withStringUp = (
  project: Project,
  id: string,
  change: (stringUp: StringUp) => Result<StringUp>,
): Result<Project> => {
  const before = project.build?.stringUps.find((each) => each.id === id);
  if (before === undefined) return fail('build.stringUps', 'stringUp.unknown', 'There is no such string-up.');
  const after = change(before);
  if (!after.ok) return after;
  return withBuild(project, (build) =>
    ok({ ...build, stringUps: build.stringUps.map((each) => (each.id === id ? after.value : each)) }),
  );
};
