import { add, between, distance, dot, rotate, scale, subtract } from '../../geom/points';
import type { Point } from '../../geom/types';
import { polyline } from '../polyline';
import type { Item } from '../types';
import { DIMENSION } from './measures';
import { arrowhead, dimensionPath, dimensionText, requireFinite, shelfAt, wordsWidth } from './pieces';
import { readingWay } from './readingWay';
import type { DimensionWords, ShelfSide } from './types';

export interface LinearOptions extends DimensionWords {
  /** What is told: the distance across the centreline (along x), along it (along y), or in a straight line. */
  readonly direction: 'across' | 'along' | 'aligned';
  /**
   * How far the dimension line lies from the nearer of both points, mm. across: + toward the tail; along: + toward greater
   * x; aligned: + clockwise of the way from `from` to `to`, as seen. 0 draws it at that point.
   */
  readonly offset: number;
  /** The side of the line that the words are on, as they are read; above when absent. */
  readonly words?: 'above' | 'below';
  /** How far the words are moved along the line as they are read, mm; the line then reaches under them. */
  readonly slide?: number;
  /** In place of words at the line: it runs on beyond `to`, mm, to a shelf that carries them. */
  readonly shelf?: { readonly beyond: number; readonly side: ShelfSide };
}

/** Way of the dimension line from `from` to `to`, and the way in which offsets count; unit vectors. */
const frameOf = (from: Point, to: Point, direction: LinearOptions['direction']): { along: Point; aside: Point } => {
  const way = subtract(to, from);
  if (direction === 'across') return { along: { x: way.x < 0 ? -1 : 1, y: 0 }, aside: { x: 0, y: 1 } };
  if (direction === 'along') return { along: { x: 0, y: way.y < 0 ? -1 : 1 }, aside: { x: 1, y: 0 } };
  const length = distance(from, to);
  const along = length === 0 ? { x: 1, y: 0 } : scale(way, 1 / length);
  return { along, aside: { x: 0 - along.y, y: along.x } };
};

const witness = (options: LinearOptions, end: string, at: Point, foot: Point): readonly Item[] => {
  const reach = distance(at, foot);
  if (reach <= DIMENSION.gap) return [];
  const way = scale(subtract(foot, at), 1 / reach);
  const path = polyline(add(at, scale(way, DIMENSION.gap)), add(foot, scale(way, DIMENSION.past)));
  return [dimensionPath(options, `witness-${end}`, path)];
};

/**
 * A distance between two points: witness lines, a dimension line with arrowheads at them, and words that read from below
 * or from the right. Words keep their turn when an item is mirrored, so give points that are on the hand's side already,
 * unless the words are level.
 *
 * @throws RangeError when a number is not finite
 */
export const linearDimension = (from: Point, to: Point, options: LinearOptions): readonly Item[] => {
  const { direction, offset, words = 'above', slide = 0, shelf, text } = options;
  requireFinite('linearDimension', from.x, from.y, to.x, to.y, offset, slide, shelf?.beyond ?? 0);
  const { along, aside } = frameOf(from, to, direction);
  const sides = [dot(from, aside), dot(to, aside)];
  const level = (offset < 0 ? Math.min(...sides) : Math.max(...sides)) + offset;
  const footOf = (at: Point): Point => add(at, scale(aside, level - dot(at, aside)));
  const [start, end] = [footOf(from), footOf(to)];
  const span = distance(start, end);
  const outside = span < DIMENSION.roomForArrows;
  const read = readingWay(along);
  const middle = add(between(start, end, 0.5), scale(read, slide));

  // Ends of the dimension line, counted along it from `start`.
  const more = outside ? DIMENSION.outside : 0;
  const reach = { first: -more, last: span + more };
  const items: Item[] = [...witness(options, 'from', from, start), ...witness(options, 'to', to, end)];
  const corners: Point[] = [];
  if (shelf !== undefined) {
    const elbow = add(end, scale(along, shelf.beyond));
    const laid = shelfAt(options, elbow, shelf.side);
    corners.push(elbow, laid.end);
    items.push(laid.text);
  } else {
    if (slide !== 0) {
      const centre = dot(subtract(middle, start), along);
      reach.first = Math.min(reach.first, centre - wordsWidth(text) / 2);
      reach.last = Math.max(reach.last, centre + wordsWidth(text) / 2);
    }
    corners.push(add(start, scale(along, reach.last)));
    const up = rotate(read, words === 'above' ? -Math.PI / 2 : Math.PI / 2);
    items.push(dimensionText(options, add(middle, scale(up, DIMENSION.toWords)), 'middle', Math.atan2(read.y, read.x)));
  }
  const inward = outside ? 1 : -1;
  return [
    dimensionPath(options, 'line', polyline(add(start, scale(along, reach.first)), ...corners)),
    arrowhead(options, 'arrow-from', start, scale(along, inward)),
    arrowhead(options, 'arrow-to', end, scale(along, -inward)),
    ...items,
  ];
};
