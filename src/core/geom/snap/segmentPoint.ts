import { arcGeometry } from '../arcGeometry';
import { cubicPoint } from '../cubicPoint';
import { between } from '../points';
import type { Point, Segment } from '../types';

/** The point a share t (0 at its start, 1 at its end) along a segment; on a cubic by its own parameter. */
export const segmentPoint = (start: Point, segment: Segment, t: number): Point => {
  switch (segment.kind) {
    case 'line':
      return between(start, segment.to, t);
    case 'cubic':
      return cubicPoint(start, segment, t);
    case 'arc': {
      const { radius, startAngle, sweep } = arcGeometry(start, segment);
      const angle = startAngle + sweep * t;
      return { x: segment.centre.x + radius * Math.cos(angle), y: segment.centre.y + radius * Math.sin(angle) };
    }
  }
};
