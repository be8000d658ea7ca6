import type { Project } from '../../../core/document/types';
import type { Point } from '../../../core/geom/types';
import type { Result } from '../../../core/result';
import { placeNodes } from './placeNodes';

/** One node of the outline brought to an exact x, y or both; codes as for placeNodes. */
export const setNodePlace = (project: Project, node: number, place: Partial<Point>): Result<Project> =>
  placeNodes(project, new Map([[node, place]]));
