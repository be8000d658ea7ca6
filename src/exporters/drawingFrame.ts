import { isBold, LINE_STYLES } from '../core/drawing/lineStyles';
import type { Item, TextItem } from '../core/drawing/types';
import { aroundAll } from '../core/geom/aroundAll';
import { pathBounds } from '../core/geom/pathBounds';
import type { Bounds } from '../core/geom/types';
import { measureText } from '../core/text/measureText';

/** Paper around the drawing, mm. */
const MARGIN = 4;

/** The box around a line of words, a font size up and down from its middle. */
const textBounds = ({ at, text, height, anchor, angle, role }: TextItem): Bounds => {
  const width = measureText(text, height, isBold(role) ? 'bold' : 'regular');
  const left = { start: 0, middle: 0.5, end: 1 }[anchor] * width;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const corners = [-left, width - left].flatMap((along) =>
    [-height, height].map((down) => ({ x: at.x + along * cos - down * sin, y: at.y + along * sin + down * cos })),
  );
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
};

const itemBounds = (item: Item): Bounds => {
  if (item.kind === 'text') return textBounds(item);
  const { minX, minY, maxX, maxY } = pathBounds(item.path);
  const half = LINE_STYLES[item.role].width / 2;
  return { minX: minX - half, minY: minY - half, maxX: maxX + half, maxY: maxY + half };
};

/**
 * The rectangle that a file shows of a drawing: all of its lines and words with a margin, its sides on whole millimetres of
 * the drawing's own frame.
 *
 * @throws RangeError when a path is not valid, or nothing is drawn
 */
export const drawingFrame = (items: readonly Item[]): Bounds => {
  if (items.length === 0) throw new RangeError('Expected a drawing with something in it.');
  const { minX, minY, maxX, maxY } = aroundAll(items.map(itemBounds));
  return {
    minX: Math.floor(minX - MARGIN),
    minY: Math.floor(minY - MARGIN),
    maxX: Math.ceil(maxX + MARGIN),
    maxY: Math.ceil(maxY + MARGIN),
  };
};
