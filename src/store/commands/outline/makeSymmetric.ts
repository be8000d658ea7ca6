import type { Project } from '../../../core/document/types';
import { makeSymmetric as mirrored, type OutlineSide } from '../../../core/geom/edit/makeSymmetric';
import { ok, type Result } from '../../../core/result';
import { editOutline } from './editOutline';

/** Both sides of the outline made like one of them, and kept alike from then on. Codes: those of makeSymmetric in core and of editOutline. */
export const makeSymmetric = (project: Project, like: OutlineSide): Result<Project> =>
  editOutline(project, ({ path }) => {
    const made = mirrored(path, like);
    return made.ok ? ok({ ...made.value, symmetric: true }) : made;
  });
