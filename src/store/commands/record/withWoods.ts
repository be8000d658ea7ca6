import type { WoodUsed } from '../../../core/document/buildTypes';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** The instrument with its woods changed. Codes: build.none, and those of `change`. */
export const withWoods = (
  project: Project,
  change: (woods: readonly WoodUsed[]) => Result<readonly WoodUsed[]>,
): Result<Project> => {
  const { build } = project;
  if (build === null)
    return fail('build', 'build.none', 'Expected one instrument, and this is a model: make an instrument of it first.');
  const woods = change(build.woods);
  return woods.ok ? ok({ ...project, build: { ...build, woods: woods.value } }) : woods;
};
