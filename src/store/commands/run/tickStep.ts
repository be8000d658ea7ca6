import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { runCase } from '../../../core/run/runCase';
import { runSteps } from '../../../core/run/runSteps';
import { withBuild } from '../place/withBuild';

/** A step of the run, done at an ISO 8601 instant; null: not done. Code: run.noStep for one that this work does not have. */
export const tickStep = (project: Project, id: string, at: string | null): Result<Project> => {
  if (!runSteps(runCase(project, 0)).some((step) => step.id === id))
    return fail('build.steps', 'run.noStep', 'This work has no such step.');
  return withBuild(project, (build) => {
    const others = Object.entries(build.steps).filter(([each]) => each !== id);
    return ok({ ...build, steps: Object.fromEntries(at === null ? others : [...others, [id, at]]) });
  });
};
