import type { Project } from '../../../core/document/types';
import { unpaired } from '../../../core/geom/edit/editBothSides';
import { isSymmetric } from '../../../core/geom/edit/isSymmetric';
import { SAME_MM } from '../../../core/geom/edit/pairing';
import { ok, type Result } from '../../../core/result';
import { editOutline } from './editOutline';

/**
 * Whether edits keep both sides of the outline alike; the outline itself stays. Codes: outline.unpaired when they are to be
 * kept alike and are not (makeSymmetric makes them so), those of editOutline.
 */
export const setSymmetric = (project: Project, symmetric: boolean): Result<Project> =>
  editOutline(project, ({ path }) => (symmetric && !isSymmetric(path, SAME_MM) ? unpaired() : ok({ path, symmetric })));
