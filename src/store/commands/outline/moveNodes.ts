import type { Project } from '../../../core/document/types';
import { moveNodes as moved } from '../../../core/geom/edit/moveNodes';
import { add } from '../../../core/geom/points';
import type { Point } from '../../../core/geom/types';
import type { Result } from '../../../core/result';
import { type EditMode, editPlaces } from './editOutline';
import { newPlaces } from './newPlaces';

/** Nodes of the outline moved by the same way, mm. Codes: outline.noNode, those of moveNodes in core and of editOutline. */
export const moveNodes = (project: Project, nodes: readonly number[], by: Point, mode?: EditMode): Result<Project> =>
  editPlaces(
    project,
    ({ path, symmetric }) => {
      const to = newPlaces(
        path,
        nodes.map((node) => [node, by] as const),
        add,
      );
      return to.ok ? moved(path, to.value, symmetric) : to;
    },
    mode,
  );
