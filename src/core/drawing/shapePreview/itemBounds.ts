import { pathBounds } from '../../geom/pathBounds';
import type { Bounds } from '../../geom/types';
import { CAPITAL_HEIGHT } from '../../text/capitalHeight';
import { measureText } from '../../text/measureText';
import { isBold } from '../lineStyles';
import type { Item } from '../types';

const BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

/** How far letters such as g and commas hang below their line: 483 of 2048 units, DejaVu Sans Condensed. */
const BELOW = 483 / 2048;

/** The room that a line or level words take. */
export const itemBounds = (item: Item): Bounds => {
  if (item.kind === 'path') return pathBounds(item.path);
  const width = measureText(item.text, item.height, isBold(item.role) ? 'bold' : 'regular');
  const minX = item.at.x - BEFORE[item.anchor] * width;
  const half = (CAPITAL_HEIGHT / 2) * item.height;
  return { minX, maxX: minX + width, minY: item.at.y - half, maxY: item.at.y + half + BELOW * item.height };
};
