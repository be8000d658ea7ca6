import type { Project } from '../../../core/document/types';
import { type HandleSide, moveHandle as moved } from '../../../core/geom/edit/moveHandle';
import type { Point } from '../../../core/geom/types';
import type { Result } from '../../../core/result';
import { type EditMode, editPlaces } from './editOutline';

/** A handle of a node moved to a place, footprint frame, mm. Codes: those of moveHandle in core and of editOutline. */
export const moveHandle = (
  project: Project,
  node: number,
  side: HandleSide,
  to: Point,
  mode?: EditMode,
): Result<Project> => editPlaces(project, ({ path, symmetric }) => moved(path, node, side, to, symmetric), mode);
