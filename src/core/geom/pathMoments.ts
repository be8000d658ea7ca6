import { closedSegments } from './closedSegments';
import { requirePath } from './requirePath';
import { type Moments, segmentMoments } from './segmentMoments';
import type { Path } from './types';

/**
 * Area and first moments of what a closed path encloses, counted from its start, where rounding is least.
 *
 * @throws RangeError when the path is open or not valid
 */
export function pathMoments(path: Path): Moments {
  if (!requirePath(path).closed) throw new RangeError('Expected a closed path: an open one encloses nothing.');
  let area = 0;
  let x = 0;
  let y = 0;
  for (const { start, segment } of closedSegments(path)) {
    const part = segmentMoments(start, segment, path.start);
    area += part.area;
    x += part.x;
    y += part.y;
  }
  return { area, x, y };
}
