import { closedSegments } from '../closedSegments';
import type { Path } from '../types';
import { flatCorners } from './flatCorners';

/**
 * A closed outline as lines that stray from it by no more than `stray`, mm (> 0), and enclose the same area: so much faster
 * to offset as there are fewer of them.
 *
 * @throws RangeError when the path is open or not valid
 */
export const roughOutline = (outline: Path, stray: number): Path => {
  const [start = outline.start, ...others] = flatCorners(closedSegments(outline), stray);
  return { start, segments: [...others, start].map((to) => ({ kind: 'line', to })), closed: true };
};
