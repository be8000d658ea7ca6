import type { Project } from '../../../core/document/types';
import { nodeOfPart } from '../../../core/drawing/nodes/nodePart';
import type { PartName } from '../../../core/drawing/types';
import { nodesOf } from '../../../core/geom/edit/nodesOf';
import type { Point } from '../../../core/geom/types';
import { LOCATING_SIDES } from './moveOther';

/** The parts among these that may lie anywhere, with their places, footprint frame: nodes of the outline and free locating pins. */
export const freePlaces = (project: Project, parts: readonly PartName[]): ReadonlyMap<PartName, Point> => {
  const { outline, locating } = project.bridge;
  const nodes = outline.kind === 'drawn' ? nodesOf(outline.path) : [];
  const points = locating.site === 'free' ? locating.points : null;
  const found = parts.flatMap((part): readonly [PartName, Point][] => {
    const node = nodes[nodeOfPart(part) ?? -1];
    const side = Object.hasOwn(LOCATING_SIDES, part) ? LOCATING_SIDES[part as keyof typeof LOCATING_SIDES] : null;
    const at = node?.at ?? (side === null ? undefined : points?.[side]);
    return at === undefined ? [] : [[part, at]];
  });
  return new Map(found);
};
