import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { withBuild } from '../place/withBuild';

/** A rebate to start from, mm: 1/16 in wide, as deep as a film of 0.006 in and a little. */
const USUAL = { width: 25.4 / 16, depth: 0.2 } as const;

/** A rebate under the rim, or none. A model begins an instrument with it. */
export const chooseRebate = (project: Project, wanted: boolean): Result<Project> =>
  withBuild(project, (build) => ok({ ...build, rebate: wanted ? (build.rebate ?? USUAL) : null }));
