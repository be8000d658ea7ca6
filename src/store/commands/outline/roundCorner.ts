import type { Project } from '../../../core/document/types';
import { roundCorner as rounded } from '../../../core/geom/edit/roundCorner';
import type { Result } from '../../../core/result';
import { editOutline } from './editOutline';

/** A corner of the outline rounded, radius in mm. Codes: those of roundCorner in core and of editOutline. */
export const roundCorner = (project: Project, node: number, radius: number): Result<Project> =>
  editOutline(project, ({ path, symmetric }) => rounded(path, node, radius, symmetric));
