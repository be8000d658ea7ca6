import type { Project } from '../../../core/document/types';
import { deleteNodes as without } from '../../../core/geom/edit/deleteNodes';
import type { Result } from '../../../core/result';
import { editOutline } from './editOutline';

/** Nodes of the outline taken away. Codes: those of deleteNodes in core and of editOutline. */
export const deleteNodes = (project: Project, nodes: readonly number[]): Result<Project> =>
  editOutline(project, ({ path, symmetric }) => without(path, nodes, symmetric));
