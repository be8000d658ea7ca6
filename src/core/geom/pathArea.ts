import { signedArea } from './signedArea';
import type { Path } from './types';

/**
 * The area inside a closed path, mm², never negative. Exact for lines, arcs and cubics.
 *
 * @throws RangeError when the path is open or not valid
 */
export function pathArea(path: Path): number {
  return Math.abs(signedArea(path));
}
