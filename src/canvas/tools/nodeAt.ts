import type { OutlineNode } from '../../core/geom/edit/nodesOf';
import { distance } from '../../core/geom/points';
import type { Point } from '../../core/geom/types';
import type { Press } from '../handTools';
import type { Frame } from './frame';
import { reachOf } from './reach';

/** A node, or one of its handles, under a pointer. */
export type NodeHit =
  | { readonly kind: 'node'; readonly node: OutlineNode }
  | { readonly kind: 'handle'; readonly node: OutlineNode; readonly side: 'before' | 'after'; readonly at: Point };

/** The node, or the handle of a chosen node, that lies nearest to a press and within its reach; null for none. */
export const nodeAt = (
  nodes: readonly OutlineNode[],
  chosen: readonly number[],
  frame: Frame,
  { at, by }: Press,
): NodeHit | null => {
  const off = (place: Point): number => distance(frame.onScreen(place), at);
  const ofNodes = nodes.map((node): Near => ({ hit: { kind: 'node', node }, off: off(node.at) }));
  const ofHandles = nodes
    .filter(({ index }) => chosen.includes(index))
    .flatMap((node) =>
      (['before', 'after'] as const).flatMap((side): readonly Near[] => {
        const place = node[side];
        return place === null ? [] : [{ hit: { kind: 'handle', node, side, at: place }, off: off(place) }];
      }),
    );
  let nearest: Near | null = null;
  for (const each of [...ofNodes, ...ofHandles]) if (each.off < (nearest?.off ?? reachOf(by))) nearest = each;
  return nearest?.hit ?? null;
};

interface Near {
  readonly hit: NodeHit;
  readonly off: number;
}
