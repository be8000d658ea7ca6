import type { Project } from '../../../core/document/types';
import type { NodeJoin } from '../../../core/geom/edit/nodesOf';
import { setJoin as withJoin } from '../../../core/geom/edit/setJoin';
import type { Result } from '../../../core/result';
import { editPlaces } from './editOutline';

/** A node of the outline made a corner or smooth. Codes: those of setJoin in core and of editOutline. */
export const setJoin = (project: Project, node: number, join: NodeJoin): Result<Project> =>
  editPlaces(project, ({ path, symmetric }) => withJoin(path, node, join, symmetric));
