import { add, cross, distance, dot, scale, subtract } from '../../geom/points';
import type { Arc, Point } from '../../geom/types';
import { polyline } from '../polyline';
import type { Item } from '../types';
import { DIMENSION } from './measures';
import { arrowhead, dimensionPath, dimensionText, requireFinite } from './pieces';
import type { DimensionWords } from './types';

export interface AngleOptions extends DimensionWords {
  /** Of the dimension arc about the corner, mm, above 0. */
  readonly radius: number;
}

const unit = (way: Point): Point => scale(way, 1 / Math.hypot(way.x, way.y));
const turned = (way: Point, clockwise: boolean): Point =>
  clockwise ? { x: 0 - way.y, y: way.x } : { x: way.y, y: 0 - way.x };

/** A side of the angle drawn on from where its point lies to just past the arc; nothing when it reaches so far by itself. */
const witness = (options: AngleOptions, end: string, corner: Point, at: Point, way: Point): readonly Item[] => {
  const from = distance(corner, at) + DIMENSION.gap;
  const to = options.radius + DIMENSION.past;
  if (from >= to) return [];
  return [
    dimensionPath(options, `witness-${end}`, polyline(add(corner, scale(way, from)), add(corner, scale(way, to)))),
  ];
};

/** Words beside the middle of the arc, level. */
const wordsBeside = (options: AngleOptions, corner: Point, way: Point): Item => {
  const sideways = Math.abs(way.x) > 0.4;
  const clear = options.radius + (sideways ? 1.5 : DIMENSION.toWords);
  const anchor = sideways ? (way.x > 0 ? 'start' : 'end') : 'middle';
  return dimensionText(options, add(corner, scale(way, clear)), anchor);
};

/**
 * The angle at a corner between the ways to two points, the smaller of both: an arc with arrowheads at its sides, and level
 * words beside its middle.
 *
 * @throws RangeError when a number is not finite, the radius is not above 0, or a point lies in the corner
 */
export const angleDimension = (corner: Point, from: Point, to: Point, options: AngleOptions): readonly Item[] => {
  const { radius } = options;
  requireFinite('angleDimension', corner.x, corner.y, from.x, from.y, to.x, to.y, radius);
  if (radius <= 0) throw new RangeError(`angleDimension: expected a radius above 0, got ${radius}.`);
  if (distance(corner, from) === 0 || distance(corner, to) === 0)
    throw new RangeError('angleDimension: expected two points away from the corner.');
  const [one, other] = [unit(subtract(from, corner)), unit(subtract(to, corner))];
  const clockwise = cross(one, other) >= 0;
  const turn = clockwise ? 1 : -1;
  const first = Math.atan2(one.y, one.x);
  const sweep = Math.atan2(Math.abs(cross(one, other)), dot(one, other));
  const place = (angle: number): Point => add(corner, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
  const [start, end] = [place(first), place(first + turn * sweep)];
  const outside = distance(start, end) < DIMENSION.roomForArrows;
  // Outer arrowheads stand on an arc that runs on beyond both sides, but not round into itself.
  const more = outside ? Math.min(DIMENSION.outside / radius, (2 * Math.PI - sweep) / 3) : 0;
  const arc: Arc = { kind: 'arc', to: place(first + turn * (sweep + more)), centre: corner, clockwise };
  const middle = first + (turn * sweep) / 2;
  return [
    dimensionPath(options, 'line', { start: place(first - turn * more), segments: [arc], closed: false }),
    arrowhead(options, 'arrow-from', start, turned(one, clockwise === outside)),
    arrowhead(options, 'arrow-to', end, turned(other, clockwise !== outside)),
    ...witness(options, 'from', corner, from, one),
    ...witness(options, 'to', corner, to, other),
    wordsBeside(options, corner, { x: Math.cos(middle), y: Math.sin(middle) }),
  ];
};
