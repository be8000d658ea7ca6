import type { Drop } from '../../../core/document/buildTypes';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from './withBuild';

/** No neck leans more, radians, and no frets stand higher over the top, mm. */
const MOST = { angle: (10 * Math.PI) / 180, height: 60 } as const;

/** How readings come down from the frets; null: as is usual. Codes: drop.angle, drop.height. */
export const chooseDrop = (project: Project, drop: Drop | null): Result<Project> => {
  if (drop !== null && !(Math.abs(drop.angle) <= MOST.angle))
    return fail('build.drop.angle', 'drop.angle', 'Expected an angle of the neck from −10 to 10°.');
  if (drop !== null && !(drop.height >= 0 && drop.height <= MOST.height))
    return fail('build.drop.height', 'drop.height', `Expected a height from 0 to ${MOST.height} mm.`);
  return withBuild(project, (build) => ok({ ...build, drop }));
};
