import type { Project } from '../../../core/document/types';
import { type Bulge, setRadius as withRadius } from '../../../core/geom/edit/setRadius';
import type { Result } from '../../../core/result';
import { editPlaces } from './editOutline';

/** A segment of the outline made the true arc of a radius, mm. Codes: those of setRadius in core and of editOutline. */
export const setRadius = (project: Project, segment: number, radius: number, bulge?: Bulge): Result<Project> =>
  editPlaces(project, ({ path, symmetric }) => withRadius(path, segment, radius, bulge, symmetric));
