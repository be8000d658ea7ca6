import type { Build } from '../../../core/document/buildTypes';
import { newBuild } from '../../../core/document/newBuild';
import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';

/** The project with its instrument changed; a model begins one first. Codes: those of `change`. */
export const withBuild = (project: Project, change: (build: Build) => Result<Build>): Result<Project> => {
  const build = change(project.build ?? newBuild());
  return build.ok ? ok({ ...project, build: build.value }) : build;
};
