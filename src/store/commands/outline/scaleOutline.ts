import type { Project } from '../../../core/document/types';
import { type OutlineSize, scaleOutline as scaled } from '../../../core/geom/edit/scaleOutline';
import type { Result } from '../../../core/result';
import { editOutline } from './editOutline';

/** The whole outline scaled to a length or width. Codes: those of scaleOutline in core and of editOutline. */
export const scaleOutline = (project: Project, size: OutlineSize): Result<Project> =>
  editOutline(project, ({ path, symmetric }) => scaled(path, size, symmetric));
