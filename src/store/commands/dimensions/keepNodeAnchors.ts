import type { Anchor, PinnedDimension } from '../../../core/document/dimensionTypes';
import type { Project } from '../../../core/document/types';
import { nodeOfPart, nodePart } from '../../../core/drawing/nodes/nodePart';

/** Where each node of the outline went, by its number from 0; null for one that is gone. */
export type NodesWent = (node: number) => number | null;

/** null: the anchor lost its node. */
const carried = (anchor: Anchor, went: NodesWent): Anchor | null => {
  const node = anchor.kind === 'part' ? nodeOfPart(anchor.part) : null;
  if (node === null) return anchor;
  const next = went(node);
  return next === null ? null : ({ ...anchor, part: nodePart(next) } as Anchor);
};

const carriedDimension = (dimension: PinnedDimension, went: NodesWent): readonly PinnedDimension[] => {
  if (dimension.kind === 'gap') return [dimension];
  const [from, to] = [carried(dimension.from, went), carried(dimension.to, went)];
  if (from === null || to === null) return [];
  if (dimension.kind === 'distance') return [{ ...dimension, from, to }];
  const corner = carried(dimension.corner, went);
  return corner === null ? [] : [{ ...dimension, from, corner, to }];
};

/** The project with its pinned dimensions at the nodes that they were pinned to; those whose node is gone are gone with it. */
export const keepNodeAnchors = (project: Project, went: NodesWent): Project => ({
  ...project,
  dimensions: project.dimensions.flatMap((dimension) => carriedDimension(dimension, went)),
});
