import type { Point, Segment } from '../../geom/types';

/** A straight along an edge, or nothing where the arcs on either side of it meet. */
export const straight = (from: Point, to: Point): readonly Segment[] =>
  from.x === to.x && from.y === to.y ? [] : [{ kind: 'line', to }];
