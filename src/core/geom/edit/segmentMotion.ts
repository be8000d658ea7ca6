import { arcGeometry } from '../arcGeometry';
import { cubicPoint } from '../cubicPoint';
import { add, between, scale, subtract } from '../points';
import type { Point, Segment } from '../types';

/** Place, first and second derivative of a segment at t. */
export interface Motion {
  readonly at: Point;
  readonly speed: Point;
  readonly bend: Point;
}

/** How a point runs along a segment as t goes from 0 to 1; beyond the ends a segment runs on as it would. */
export function segmentMotion(start: Point, segment: Segment): (t: number) => Motion {
  switch (segment.kind) {
    case 'line': {
      const speed = subtract(segment.to, start);
      return (t) => ({ at: between(start, segment.to, t), speed, bend: { x: 0, y: 0 } });
    }
    case 'arc': {
      const { radius, startAngle, sweep } = arcGeometry(start, segment);
      return (t) => {
        const angle = startAngle + sweep * t;
        const out = { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
        return {
          at: add(segment.centre, out),
          speed: { x: -out.y * sweep, y: out.x * sweep },
          bend: scale(out, -sweep * sweep),
        };
      };
    }
    case 'cubic': {
      const { c1, c2, to } = segment;
      const [d0, d1, d2] = [subtract(c1, start), subtract(c2, c1), subtract(to, c2)];
      return (t) => ({
        at: cubicPoint(start, segment, t),
        speed: scale(between(between(d0, d1, t), between(d1, d2, t), t), 3),
        bend: scale(between(subtract(d1, d0), subtract(d2, d1), t), 6),
      });
    }
  }
}
