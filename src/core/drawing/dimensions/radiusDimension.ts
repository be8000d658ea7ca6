import { add, scale } from '../../geom/points';
import type { Point } from '../../geom/types';
import { polyline } from '../polyline';
import type { Item } from '../types';
import { arrowhead, dimensionPath, requireFinite, shelfAt } from './pieces';
import type { DimensionWords, ShelfSide } from './types';

export interface RadiusOptions extends DimensionWords {
  /** Length of the leader square to the arc, mm: + it comes from outside of the circle, − from the centre's side. */
  readonly reach: number;
  /** y of the shelf, when the leader runs on along the centreline to it; absent: the shelf is where the leader ends. */
  readonly level?: number;
  readonly side: ShelfSide;
}

/**
 * A leader to an arc, its arrowhead on the arc and its line square to it, with the words on a shelf. angle: direction from
 * the centre to where the arrow stands, radians, + clockwise as seen. A radius of 0 points at a sharp corner.
 *
 * @throws RangeError when a number is not finite, or the radius is below 0
 */
export const radiusDimension = (
  centre: Point,
  radius: number,
  angle: number,
  options: RadiusOptions,
): readonly Item[] => {
  const { reach, level, side } = options;
  requireFinite('radiusDimension', centre.x, centre.y, radius, angle, reach, level ?? 0);
  if (radius < 0) throw new RangeError(`radiusDimension: expected a radius of 0 or more, got ${radius}.`);
  const outward: Point = { x: Math.cos(angle), y: Math.sin(angle) };
  const tip = add(centre, scale(outward, radius));
  const bend = add(tip, scale(outward, reach));
  const elbow = level === undefined ? bend : { x: bend.x, y: level };
  const { end, text } = shelfAt(options, elbow, side);
  return [
    dimensionPath(options, 'line', polyline(tip, bend, ...(level === undefined ? [] : [elbow]), end)),
    arrowhead(options, 'arrow', tip, scale(outward, reach < 0 ? 1 : -1)),
    text,
  ];
};
