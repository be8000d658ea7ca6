import { arcGeometry } from '../core/geom/arcGeometry';
import type { Path } from '../core/geom/types';

/** What a path is drawn into: a canvas or a Path2D. */
export type PathTarget = Pick<CanvasPath, 'moveTo' | 'lineTo' | 'bezierCurveTo' | 'arc' | 'closePath'>;

/** Draws a path of the display list, mm: lines, curves and arcs as they are. */
export const tracePath = (target: PathTarget, { start, segments, closed }: Path): void => {
  target.moveTo(start.x, start.y);
  let from = start;
  for (const segment of segments) {
    const { to } = segment;
    if (segment.kind === 'line') target.lineTo(to.x, to.y);
    else if (segment.kind === 'cubic') {
      const { c1, c2 } = segment;
      target.bezierCurveTo(c1.x, c1.y, c2.x, c2.y, to.x, to.y);
    } else {
      const { radius, startAngle, sweep } = arcGeometry(from, segment);
      target.arc(segment.centre.x, segment.centre.y, radius, startAngle, startAngle + sweep, sweep < 0);
    }
    from = to;
  }
  if (closed) target.closePath();
};
