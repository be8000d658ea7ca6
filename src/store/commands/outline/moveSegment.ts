import type { Project } from '../../../core/document/types';
import { moveSegment as moved } from '../../../core/geom/edit/moveSegment';
import type { Point } from '../../../core/geom/types';
import type { Result } from '../../../core/result';
import { type EditMode, editPlaces } from './editOutline';

/** A segment moved with both of its ends, mm. Codes: those of moveSegment in core and of editOutline. */
export const moveSegment = (project: Project, segment: number, by: Point, mode?: EditMode): Result<Project> =>
  editPlaces(project, ({ path, symmetric }) => moved(path, segment, by, symmetric), mode);
