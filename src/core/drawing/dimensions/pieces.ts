import { add, scale } from '../../geom/points';
import type { Path, Point } from '../../geom/types';
import { measureText } from '../../text/measureText';
import { polyline } from '../polyline';
import type { PathItem, TextItem } from '../types';
import { DIMENSION } from './measures';
import type { DimensionWords, ShelfSide } from './types';

/** A thin line of a dimension; `piece` tells it from the dimension's other lines. */
export const dimensionPath = ({ id, part, layer }: DimensionWords, piece: string, path: Path): PathItem => ({
  kind: 'path',
  id: `${id}-${piece}`,
  part,
  role: 'dimension',
  layer,
  path,
});

/** The words of a dimension, their middle line at `at`. angle: radians, + turns clockwise as seen. */
export const dimensionText = (
  { id, part, layer, text }: DimensionWords,
  at: Point,
  anchor: TextItem['anchor'] = 'middle',
  angle = 0,
): TextItem => ({
  kind: 'text',
  id: `${id}-text`,
  part,
  role: 'label',
  layer,
  at,
  text,
  height: DIMENSION.textHeight,
  anchor,
  angle,
});

/** Width of a dimension's words, mm. */
export const wordsWidth = (text: string): number => measureText(text, DIMENSION.textHeight, 'regular');

/** An open arrowhead with its point at `tip`; `way`: unit vector in which it points. */
export const arrowhead = (words: DimensionWords, piece: string, tip: Point, way: Point): PathItem => {
  const { arrow, arrowHalfAngle } = DIMENSION;
  const half = arrow * Math.tan(arrowHalfAngle);
  const back = add(tip, scale(way, -arrow));
  const aside: Point = { x: -way.y * half, y: way.x * half };
  return dimensionPath(words, piece, polyline(add(back, aside), tip, add(back, scale(aside, -1))));
};

/** Where a shelf that begins at `from` ends, and the words on it. */
export const shelfAt = (
  words: DimensionWords,
  from: Point,
  side: ShelfSide,
): { readonly end: Point; readonly text: TextItem } => {
  const { shelfPad, toWords } = DIMENSION;
  const out = side === 'right' ? 1 : -1;
  const at: Point = { x: from.x + out * shelfPad, y: from.y - toWords };
  return {
    end: { x: at.x + out * wordsWidth(words.text), y: from.y },
    text: dimensionText(words, at, side === 'right' ? 'start' : 'end'),
  };
};

/** @throws RangeError when a number is not finite */
export const requireFinite = (what: string, ...values: readonly number[]): void => {
  if (!values.every(Number.isFinite))
    throw new RangeError(`${what}: expected finite numbers, got ${values.join(', ')}.`);
};
