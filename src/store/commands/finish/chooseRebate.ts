import { rebateDepth } from '../../../core/budget/rebateAdvice';
import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { roundDecimal } from '../../../core/units/roundDecimal';
import { withBuild } from '../place/withBuild';

/** Width of a rebate to start from, mm: 1/16 in, davidsguitar.blogspot.com, ready for neck and bridge glue-up. */
const USUAL_WIDTH = 25.4 / 16;
/** A film to reckon with until it is measured, mm: lacquer is often about 0.006 in, frets.com, razor blade scraping. */
const USUAL_FILM = 0.006 * 25.4;

/** A rebate under the rim as wide as that and as deep as its film asks, or none. A model begins an instrument with it. */
export const chooseRebate = (project: Project, wanted: boolean): Result<Project> =>
  withBuild(project, (build) => {
    const { rim } = project.bridge;
    const depth = roundDecimal(rebateDepth(build.film ?? USUAL_FILM, project.limits), 2);
    const usual = { width: rim === 0 ? USUAL_WIDTH : rim, depth };
    return ok({ ...build, rebate: wanted ? (build.rebate ?? usual) : null });
  });
