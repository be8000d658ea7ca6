import type { DrawnOutline } from '../../core/document/outlineTypes';
import { nodePart, nodesAmong } from '../../core/drawing/nodes/nodePart';
import { nodeSnaps } from '../../core/drawing/nodes/nodeSnaps';
import { placeWords } from '../../core/drawing/nodes/placeWords';
import type { PartName } from '../../core/drawing/types';

import { mirrorNode } from '../../core/geom/edit/isSymmetric';
import { SAME_MM } from '../../core/geom/edit/pairing';
import { subtract } from '../../core/geom/points';
import type { Point } from '../../core/geom/types';
import { moveParts } from '../../store/commands/hand/moveParts';
import { partsInWords } from '../../store/commands/hand/partsInWords';
import { moveHandle } from '../../store/commands/outline/moveHandle';
import type { Movable } from './createDrag';
import type { NodeHit } from './nodeAt';
import type { MovableNeeds } from './partMovable';

/** A node that is dragged takes along whatever is chosen with it. */
const ofNode = (
  outline: DrawnOutline,
  index: number,
  origin: Point,
  selection: readonly PartName[],
  { marks, show, round }: MovableNeeds,
): Movable => {
  const chosen = nodesAmong(selection);
  const partnerOf = (node: number): number | null =>
    outline.symmetric ? mirrorNode(outline.path, node, SAME_MM) : null;
  const onCentreline = partnerOf(index) === index;
  const along = [...chosen, ...[index, ...chosen].flatMap((node) => partnerOf(node) ?? [])];
  return {
    label: `Move ${partsInWords(selection)}`,
    origin,
    lines: nodeSnaps({ path: outline.path, index, along, marks, show }),
    keep: (to) => (onCentreline ? { x: 0, y: to.y } : to),
    round,
    tell: placeWords(show),
    move: (to, mode) => (project) => moveParts(project, selection, subtract(to, origin), mode),
  };
};

const ofHandle = (
  { node, side, at }: Extract<NodeHit, { kind: 'handle' }>,
  { show, round }: MovableNeeds,
): Movable => ({
  label: `Move a handle of ${nodePart(node.index)}`,
  origin: at,
  lines: [
    { kind: 'x', value: node.at.x, reason: `straight along the strings from ${nodePart(node.index)}` },
    { kind: 'y', value: node.at.y, reason: `square to the centreline at ${nodePart(node.index)}` },
  ],
  round,
  tell: placeWords(show),
  move: (to, mode) => (project) => moveHandle(project, node.index, side, to, mode),
});

/** What a drag of a node or a handle moves. */
export const nodeMovable = (
  hit: NodeHit,
  outline: DrawnOutline,
  selection: readonly PartName[],
  needs: MovableNeeds,
): Movable =>
  hit.kind === 'node' ? ofNode(outline, hit.node.index, hit.node.at, selection, needs) : ofHandle(hit, needs);
