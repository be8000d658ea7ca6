import { pathBounds } from '../../../geom/pathBounds';
import { add, cross, dot, scale } from '../../../geom/points';
import type { Path, Point } from '../../../geom/types';
import { type LinePiece, linePieces } from '../items/linePieces';

/** 45°, as hatching is drawn. */
const WAY: Point = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
const ACROSS: Point = { x: -Math.SQRT1_2, y: Math.SQRT1_2 };

/**
 * Thin lines at 45° over what closed outlines enclose, holes in them left out, `apart` mm from one another; they lie on a
 * grid through the origin. Each is cut where it truly meets the outline, arcs and curves as they are.
 */
export const hatchInside = (outlines: readonly Path[], apart: number): readonly LinePiece[] => {
  const corners = outlines.flatMap((outline): readonly Point[] => {
    const { minX, minY, maxX, maxY } = pathBounds(outline);
    return [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ];
  });
  if (corners.length === 0) return [];
  const heights = corners.map((corner) => cross(WAY, corner));
  const along = corners.map((corner) => dot(WAY, corner));
  const [first, last] = [Math.ceil(Math.min(...heights) / apart), Math.floor(Math.max(...heights) / apart)];
  const ends = [Math.min(...along) - 1, Math.max(...along) + 1] as const;
  return Array.from({ length: last - first + 1 }, (_, index) => scale(ACROSS, (first + index) * apart)).flatMap(
    (foot) => linePieces(outlines, add(foot, scale(WAY, ends[0])), add(foot, scale(WAY, ends[1])), 'inside'),
  );
};
