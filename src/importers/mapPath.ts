import { arcGeometry } from '../core/geom/arcGeometry';
import type { Path, Point, Segment } from '../core/geom/types';
import { ellipseArc } from './ellipseArc';
import { applyMatrix, compose, type Matrix, moved, scaled } from './matrix';

/** The image of a path under a matrix; arcs stay arcs where circles stay circles, else they become cubics. */
export const mapPath = (path: Path, matrix: Matrix): Path => {
  let from = path.start;
  const segments = path.segments.flatMap((segment): Segment[] => {
    const start = from;
    from = segment.to;
    const place = (point: Point): Point => applyMatrix(matrix, point);
    const to = place(segment.to);
    if (segment.kind === 'line') return [{ kind: 'line', to }];
    if (segment.kind === 'cubic') return [{ kind: 'cubic', c1: place(segment.c1), c2: place(segment.c2), to }];
    const { radius, startAngle, sweep } = arcGeometry(start, segment);
    const circle = compose(moved(segment.centre.x, segment.centre.y), scaled(radius, radius));
    return ellipseArc(compose(matrix, circle), startAngle, sweep, to);
  });
  return { start: applyMatrix(matrix, path.start), segments, closed: path.closed };
};
