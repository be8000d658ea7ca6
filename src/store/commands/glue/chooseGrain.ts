import type { Project } from '../../../core/document/types';
import { GRAIN_COEFFICIENTS } from '../../../core/glue/grainCoefficients';
import { USUAL_MOVEMENT } from '../../../core/glue/usualMovement';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from '../place/withBuild';

/**
 * The wood of the top or the bridge, '' for one that is not in the table; its own figures give way to the table's. Code:
 * glue.wood.
 */
export const chooseGrain = (project: Project, piece: 'top' | 'bridge', wood: string): Result<Project> => {
  if (wood !== '' && !GRAIN_COEFFICIENTS.some(({ id }) => id === wood))
    return fail('build.movement', 'glue.wood', 'Expected one of the woods of the table.');
  return withBuild(project, (build) => {
    const movement = build.movement ?? USUAL_MOVEMENT;
    return ok({ ...build, movement: { ...movement, [piece]: { wood, radial: null, tangential: null } } });
  });
};
