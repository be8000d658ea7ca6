import { pathMoments } from './pathMoments';
import { NO_AREA_MM2 } from './tolerances';
import type { Path, Point } from './types';

/**
 * The balance point of the area inside a closed path, mm. Exact for lines, arcs and cubics.
 *
 * @throws RangeError when the path is open, not valid, or encloses no area
 */
export function pathCentroid(path: Path): Point {
  const { area, x, y } = pathMoments(path);
  if (Math.abs(area) < NO_AREA_MM2) throw new RangeError('Expected a path that encloses an area to find its centroid.');
  return { x: path.start.x + x / area, y: path.start.y + y / area };
}
