import type paperCore from 'paper/dist/paper-core';
import { arcGeometry } from '../../core/geom/arcGeometry';
import type { Arc, Path, Point } from '../../core/geom/types';

/** The point halfway along an arc: with both ends it says which circle and which way round. */
const halfway = (start: Point, arc: Arc): Point => {
  const { radius, startAngle, sweep } = arcGeometry(start, arc);
  const angle = startAngle + sweep / 2;
  return { x: arc.centre.x + radius * Math.cos(angle), y: arc.centre.y + radius * Math.sin(angle) };
};

/** A path of the display list as Paper.js draws it, in mm. Arcs go through their middle point. */
export const toPaperPath = (scope: Pick<typeof paperCore, 'Path' | 'Point'>, { start, segments, closed }: Path) => {
  const at = ({ x, y }: Point) => new scope.Point(x, y);
  const path = new scope.Path({ insert: false });
  path.moveTo(at(start));
  let from = start;
  for (const segment of segments) {
    if (segment.kind === 'line') path.lineTo(at(segment.to));
    else if (segment.kind === 'cubic') path.cubicCurveTo(at(segment.c1), at(segment.c2), at(segment.to));
    else path.arcTo(at(halfway(from, segment)), at(segment.to));
    from = segment.to;
  }
  if (closed) path.closed = true;
  return path;
};
