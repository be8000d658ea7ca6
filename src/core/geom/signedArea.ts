import { pathMoments } from './pathMoments';
import type { Path } from './types';

/**
 * The area inside a closed path, mm²: + when it runs clockwise as seen on the page (y down), − the other way. Outlines
 * run clockwise and holes the other way, so that signed areas add up. Exact for lines, arcs and cubics.
 *
 * @throws RangeError when the path is open or not valid
 */
export function signedArea(path: Path): number {
  return pathMoments(path).area;
}
