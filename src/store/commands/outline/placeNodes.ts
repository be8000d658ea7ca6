import type { Project } from '../../../core/document/types';
import { moveNodes as moved } from '../../../core/geom/edit/moveNodes';
import type { Point } from '../../../core/geom/types';
import type { Result } from '../../../core/result';
import { type EditMode, editPlaces } from './editOutline';
import { newPlaces } from './newPlaces';

/**
 * Nodes of the outline brought to exact places, footprint frame, mm; a figure that is not given stays. Partners follow as
 * moveNodes in core says. Where that moves the front edge on the centreline, y counts from the new one afterwards. Codes:
 * outline.noNode, those of moveNodes in core and of editOutline.
 */
export const placeNodes = (
  project: Project,
  places: ReadonlyMap<number, Partial<Point>>,
  mode?: EditMode,
): Result<Project> =>
  editPlaces(
    project,
    ({ path, symmetric }) => {
      const to = newPlaces(path, places, (at, { x = at.x, y = at.y }) => ({ x, y }));
      return to.ok ? moved(path, to.value, symmetric) : to;
    },
    mode,
  );
