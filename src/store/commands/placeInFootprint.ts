import { arcGeometry } from '../../core/geom/arcGeometry';
import { arcPassesAngle } from '../../core/geom/arcPassesAngle';
import { bernsteinRoots } from '../../core/geom/bernsteinRoots';
import { closedSegments } from '../../core/geom/closedSegments';
import { cubicPoint } from '../../core/geom/cubicPoint';
import { pathBounds } from '../../core/geom/pathBounds';
import { transformPath } from '../../core/geom/transformPath';
import type { Path, Point, Segment } from '../../core/geom/types';

/** Where a segment meets the y axis between its ends. */
const onAxis = (start: Point, segment: Segment): number[] => {
  const { to } = segment;
  switch (segment.kind) {
    case 'line': {
      if (start.x * to.x >= 0) return [];
      return [start.y + ((to.y - start.y) * start.x) / (start.x - to.x)];
    }
    case 'arc': {
      const geometry = arcGeometry(start, segment);
      const { x, y } = segment.centre;
      const half = Math.sqrt(geometry.radius ** 2 - x ** 2);
      return [y - half, y + half].filter((at) => arcPassesAngle(geometry, Math.atan2(at - y, -x)));
    }
    case 'cubic':
      return bernsteinRoots([start.x, segment.c1.x, segment.c2.x, to.x]).map((t) => cubicPoint(start, segment, t).y);
  }
};

/**
 * A closed outline moved into the footprint frame: the middle of its width on the centreline, and the least y at which it
 * crosses the centreline, which is its front edge there, at 0. mm.
 *
 * @throws RangeError when the path is not valid
 */
export function placeInFootprint(path: Path): Path {
  const { minX, maxX, minY } = pathBounds(path);
  const centred = transformPath(path, 0, { x: -(minX + maxX) / 2, y: -minY });
  const crossings = closedSegments(centred).flatMap(({ start, segment }) => [
    ...(start.x === 0 ? [start.y] : []),
    ...onAxis(start, segment),
  ]);
  return transformPath(centred, 0, { x: 0, y: -Math.min(...crossings) });
}
