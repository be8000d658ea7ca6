import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withRepair } from './withRepair';

/** One old hole less; without its last one the old bridge has none. Codes: repair.none, repair.noHole. */
export const removeFormerHole = (project: Project, id: string): Result<Project> =>
  withRepair(project, (repair) => {
    const { holes } = repair;
    if (holes?.kind !== 'each' || !holes.each.some((hole) => hole.id === id))
      return fail('repair.holes', 'repair.noHole', 'There is no such old hole.');
    const each = holes.each.filter((hole) => hole.id !== id);
    return ok({ ...repair, holes: each.length === 0 ? null : { ...holes, each } });
  });
