import type { Project } from '../../../core/document/types';
import { nodeOfPart } from '../../../core/drawing/nodes/nodePart';
import type { PartName } from '../../../core/drawing/types';
import type { Point } from '../../../core/geom/types';
import { ok, type Result } from '../../../core/result';
import { placeNodes } from '../outline/placeNodes';
import { LOCATING_SIDES } from './moveOther';

const withPins = (project: Project, places: ReadonlyMap<PartName, Point>): Project => {
  const { locating } = project.bridge;
  if (locating.points === null) return project;
  const points = { ...locating.points };
  for (const [part, side] of Object.entries(LOCATING_SIDES)) points[side] = places.get(part) ?? points[side];
  return { ...project, bridge: { ...project.bridge, locating: { ...locating, points } } };
};

/** Parts that may lie anywhere brought to places, footprint frame as it is now. Codes: those of placeNodes. */
export const placeParts = (project: Project, places: ReadonlyMap<PartName, Point>): Result<Project> => {
  const nodes = [...places].flatMap(([part, at]): readonly [number, Point][] => {
    const node = nodeOfPart(part);
    return node === null ? [] : [[node, at]];
  });
  // Pins first: placing nodes may seat the frame anew, and what is told in it goes along.
  const pinned = withPins(project, places);
  return nodes.length === 0 ? ok(pinned) : placeNodes(pinned, new Map(nodes));
};
