import { isBold } from '../core/drawing/lineStyles';
import type { Item, PartName, PathItem, TextItem } from '../core/drawing/types';
import type { Bounds, Path } from '../core/geom/types';
import { CAPITAL_HEIGHT } from '../core/text/capitalHeight';
import { FONT_FAMILY, lineLook, textLook } from './itemLook';
import { meet, widened } from './repaint/boxes';
import { itemBox, LINE_MARGIN } from './repaint/itemBox';
import type { Theme } from './theme';
import { tracePath } from './tracePath';

/** How a display list is seen. */
export interface Look {
  readonly theme: Theme;
  /** Screen pixels to a millimetre. */
  readonly zoom: number;
  readonly selection: readonly PartName[];
}

/** Paths as the canvas knows them: a path never changes, and most are painted again in the next frame. */
const traced = new WeakMap<Path, Path2D>();

/** The path as the canvas knows it. */
export const tracedOf = (path: Path): Path2D => {
  const known = traced.get(path);
  if (known !== undefined) return known;
  const fresh = new Path2D();
  tracePath(fresh, path);
  traced.set(path, fresh);
  return fresh;
};

const paintPath = (context: CanvasRenderingContext2D, { role, path }: PathItem, chosen: boolean, look: Look): void => {
  const { theme, zoom } = look;
  const { width, dash } = lineLook(role, zoom, chosen);
  const shape = tracedOf(path);
  const fill = theme.fill(role);
  if (fill !== null) {
    context.fillStyle = chosen ? theme.chosenFill : fill;
    context.fill(shape);
  }
  context.strokeStyle = chosen ? theme.chosen : theme.line(role);
  context.lineWidth = width;
  context.setLineDash(dash);
  context.stroke(shape);
};

const ALIGN = { start: 'left', middle: 'center', end: 'right' } as const;

const paintText = (context: CanvasRenderingContext2D, item: TextItem, chosen: boolean, look: Look): void => {
  const { theme, zoom } = look;
  const size = textLook(item, zoom);
  if (size === null) return;
  context.save();
  context.translate(item.at.x, item.at.y);
  context.rotate(item.angle);
  context.scale(1 / zoom, 1 / zoom);
  context.fillStyle = chosen ? theme.chosen : theme.line(item.role);
  context.font = `${isBold(item.role) ? 'bold ' : ''}${size}px ${FONT_FAMILY}`;
  context.textAlign = ALIGN[item.anchor];
  context.fillText(item.text, 0, (CAPITAL_HEIGHT / 2) * size);
  context.restore();
};

/**
 * Paints what of a display list may be seen in a box, mm, in the order of the list, on a canvas whose unit is a millimetre
 * of the drawing.
 */
export const paintItems = (
  context: CanvasRenderingContext2D,
  items: readonly Item[],
  box: Bounds,
  look: Look,
): void => {
  const chosen = new Set(look.selection);
  const seen = widened(box, LINE_MARGIN / look.zoom);
  context.lineJoin = 'round';
  for (const item of items) {
    if (!meet(itemBox(item, look.zoom), seen)) continue;
    if (item.kind === 'path') paintPath(context, item, chosen.has(item.part), look);
    else paintText(context, item, chosen.has(item.part), look);
  }
};
