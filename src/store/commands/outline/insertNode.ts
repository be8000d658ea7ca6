import type { Project } from '../../../core/document/types';
import { insertNode as withNode } from '../../../core/geom/edit/insertNode';
import type { Result } from '../../../core/result';
import { editOutline } from './editOutline';

/** A node put on a segment at t, as nearestOnPath tells it; the outline stays. Codes: those of insertNode in core and of editOutline. */
export const insertNode = (project: Project, segment: number, t: number): Result<Project> =>
  editOutline(project, ({ path, symmetric }) => withNode(path, segment, t, symmetric));
