import { bernsteinRoots } from '../../geom/bernsteinRoots';
import { closedSegments } from '../../geom/closedSegments';
import { cubicPoint } from '../../geom/cubicPoint';
import { pathToCubics } from '../../geom/pathToCubics';
import type { Path } from '../../geom/types';

/** How far a footprint reaches along the neck, y of its first and last edge, mm. */
export interface FootprintReach {
  readonly front: number;
  readonly back: number;
}

/**
 * Where the line at x, parallel to the centreline, first enters a closed outline and last leaves it; null where it passes
 * beside it. Arcs by cubics of at most 30°, within 4e-7 of their radius.
 * @throws RangeError when the path is not valid
 */
export const footprintReach = (outline: Path, x: number): FootprintReach | null => {
  const crossings = closedSegments(pathToCubics(outline)).flatMap(({ start, segment }): readonly number[] => {
    const { to } = segment;
    const ends = [start, to].flatMap((point) => (point.x === x ? [point.y] : []));
    if (segment.kind !== 'cubic') {
      const share = (x - start.x) / (to.x - start.x);
      return share > 0 && share < 1 ? [...ends, start.y + (to.y - start.y) * share] : ends;
    }
    const away = [start, segment.c1, segment.c2, to].map((point) => point.x - x);
    return [...ends, ...bernsteinRoots(away).map((t) => cubicPoint(start, segment, t).y)];
  });
  if (crossings.length === 0) return null;
  return { front: Math.min(...crossings), back: Math.max(...crossings) };
};
