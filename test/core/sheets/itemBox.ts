import { isBold } from '../../../src/core/drawing/lineStyles';
import type { Item, TextItem } from '../../../src/core/drawing/types';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import type { Bounds } from '../../../src/core/geom/types';
import { measureText } from '../../../src/core/text/measureText';

/** DejaVu Sans Condensed: capitals are 1493 of 2048 units tall, commas and g reach 483 below the line. Table OS/2 and glyphs. */
const CAPITAL = 1493 / 2048;
const BELOW = 483 / 2048;

/** The words as they are printed: capitals' height, or with what hangs below the line as well. */
export const textBox = (item: TextItem, withTails: boolean): Bounds => {
  const width = measureText(item.text, item.height, isBold(item.role) ? 'bold' : 'regular');
  const from = item.anchor === 'start' ? 0 : item.anchor === 'end' ? -width : -width / 2;
  const half = (CAPITAL * item.height) / 2;
  const foot = half + (withTails ? BELOW * item.height : 0);
  const { x, y } = item.at;
  const corners = [
    [from, -half],
    [from + width, -half],
    [from, foot],
    [from + width, foot],
  ].map(([along = 0, down = 0]) => ({
    x: x + along * Math.cos(item.angle) - down * Math.sin(item.angle),
    y: y + along * Math.sin(item.angle) + down * Math.cos(item.angle),
  }));
  return {
    minX: Math.min(...corners.map((corner) => corner.x)),
    maxX: Math.max(...corners.map((corner) => corner.x)),
    minY: Math.min(...corners.map((corner) => corner.y)),
    maxY: Math.max(...corners.map((corner) => corner.y)),
  };
};

/** The smallest upright rectangle around an item. */
export const itemBox = (item: Item): Bounds => (item.kind === 'text' ? textBox(item, true) : pathBounds(item.path));

/** How far two boxes reach into one another, the lesser way; 0 or less when they are apart. */
export const overlap = (a: Bounds, b: Bounds): number =>
  Math.min(Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX), Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY));
