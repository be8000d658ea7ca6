import { between, cross, dot, scale } from '../../geom/points';
import type { Path, Point } from '../../geom/types';

/** Two ends of one hatching line, mm. */
export interface HatchLine {
  readonly from: Point;
  readonly to: Point;
}

/** More lines than this help no one; from there on they stand farther apart. */
const MOST_LINES = 300;

/** The sides of closed outlines made of straight lines. */
const sidesOf = (outlines: readonly Path[]): readonly (readonly [Point, Point])[] =>
  outlines.flatMap(({ start, segments }) =>
    segments.map(({ to }, index): readonly [Point, Point] => [segments[index - 1]?.to ?? start, to]),
  );

/**
 * Parallel lines across what some outlines of straight lines enclose, holes in it left out (even-odd), `apart` mm from one
 * another; they lie on a grid through the origin, so that hatching stays still while an outline moves. angle: radians, 0
 * along x, + carries +x toward +y.
 */
export const hatchLines = (outlines: readonly Path[], apart: number, angle: number): readonly HatchLine[] => {
  const along: Point = { x: Math.cos(angle), y: Math.sin(angle) };
  const sides = sidesOf(outlines);
  const heights = sides.map(([from]) => cross(along, from));
  if (heights.length === 0) return [];
  const low = Math.min(...heights);
  const high = Math.max(...heights);
  const step = Math.max(apart, (high - low) / MOST_LINES);
  const lines: HatchLine[] = [];
  for (let number = Math.ceil(low / step); number * step < high; number += 1) {
    const height = number * step;
    const crossings = sides.flatMap(([from, to]) => {
      const one = cross(along, from) - height;
      const other = cross(along, to) - height;
      return one < 0 === other < 0 ? [] : [dot(along, between(from, to, one / (one - other)))];
    });
    crossings.sort((one, other) => one - other);
    // From height along the normal, then along the line.
    const at = (distance: number): Point => {
      const foot = scale({ x: -along.y, y: along.x }, height);
      return { x: foot.x + along.x * distance, y: foot.y + along.y * distance };
    };
    for (let index = 0; index + 1 < crossings.length; index += 2)
      lines.push({ from: at(crossings[index] ?? 0), to: at(crossings[index + 1] ?? 0) });
  }
  return lines;
};
