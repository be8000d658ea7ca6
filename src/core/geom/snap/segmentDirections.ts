import { subtract } from '../points';
import { COINCIDENT_MM } from '../tolerances';
import type { Point, Segment } from '../types';

const first = (from: Point, points: readonly Point[]): Point => {
  const other = points.find((point) => Math.hypot(point.x - from.x, point.y - from.y) > COINCIDENT_MM);
  return other === undefined ? { x: 0, y: 0 } : subtract(other, from);
};

const turned = (ray: Point, clockwise: boolean): Point =>
  clockwise ? { x: -ray.y, y: ray.x } : { x: ray.y, y: -ray.x };

/** The directions, of any length, in which a segment leaves its start and comes to its end; 0, 0 where it has none. */
export const segmentDirections = (
  start: Point,
  segment: Segment,
): { readonly leaving: Point; readonly arriving: Point } => {
  const { to } = segment;
  switch (segment.kind) {
    case 'line':
      return { leaving: subtract(to, start), arriving: subtract(to, start) };
    case 'arc':
      return {
        leaving: turned(subtract(start, segment.centre), segment.clockwise),
        arriving: turned(subtract(to, segment.centre), segment.clockwise),
      };
    case 'cubic': {
      const back = first(to, [segment.c2, segment.c1, start]);
      return { leaving: first(start, [segment.c1, segment.c2, to]), arriving: { x: -back.x, y: -back.y } };
    }
  }
};
