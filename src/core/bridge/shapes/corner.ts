import type { Point, Segment } from '../../geom/types';

/**
 * A quarter-round corner of a clockwise outline, or nothing for radius 0: from the end of one straight to the start of
 * the next, about `centre`.
 */
export const corner = (to: Point, centre: Point, radius: number): readonly Segment[] =>
  radius === 0 ? [] : [{ kind: 'arc', to, centre, clockwise: true }];
