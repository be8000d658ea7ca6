import { cubicPoint } from './cubicPoint';
import { pathToCubics } from './pathToCubics';
import { cross, subtract } from './points';
import type { Path, Point } from './types';

/** Steps that a cubic of at most 30° is cut into: the chords then stray by under 1e-4 of the radius. */
const STEPS = 16;

/**
 * Whether a point lies inside a closed path (by winding). Within 1e-4 of the local radius of a curved edge the answer may
 * go either way; `distanceToPath` tells how near the edge is.
 *
 * @throws RangeError when the path is not valid
 */
export function pathContains(path: Path, point: Point): boolean {
  let winding = 0;
  const corners = flatCorners(path);
  for (let index = 0; index < corners.length; index += 1) {
    const from = corners[index] as Point;
    const to = corners[(index + 1) % corners.length] as Point;
    const side = cross(subtract(to, from), subtract(point, from));
    if (from.y <= point.y && to.y > point.y && side > 0) winding += 1;
    if (from.y > point.y && to.y <= point.y && side < 0) winding -= 1;
  }
  return winding !== 0;
}

/** The corners of the path with its curves cut into chords. */
function flatCorners(path: Path): readonly Point[] {
  const corners: Point[] = [path.start];
  let start = path.start;
  for (const segment of pathToCubics(path).segments) {
    if (segment.kind === 'cubic')
      for (let step = 1; step < STEPS; step += 1) corners.push(cubicPoint(start, segment, step / STEPS));
    corners.push(segment.to);
    start = segment.to;
  }
  return corners;
}
