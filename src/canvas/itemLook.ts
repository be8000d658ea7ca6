import { isBold, LINE_STYLES } from '../core/drawing/lineStyles';
import type { Item, PathItem, TextItem } from '../core/drawing/types';
import { CAPITAL_HEIGHT } from '../core/text/capitalHeight';
import type { Theme } from './theme';

/** Screen pixels for a millimetre of line width or dash: lines keep their weight however far the view is magnified. */
const PIXELS_PER_MM = 4.8;
const THINNEST = 1;
/** How much wider a chosen part is drawn, pixels. */
const CHOSEN_EXTRA = 1.4;

/** Font sizes on screen, pixels: legible from far off, and not in the way close up. */
const TEXT_PIXELS = { least: 11, most: 30 } as const;
/** Notes that would come out smaller than this, pixels, are left out: enlarged, they would lie over one another. */
const SMALLEST_NOTE = 8;

const DEGREES = 180 / Math.PI;

/** What the look of an item depends on. */
export interface Look {
  readonly theme: Theme;
  readonly zoom: number;
  readonly chosen: boolean;
}

/** Paper keeps a text as it is, and then stumbles over it when it takes the place of another. */
const colour = (scope: paper.PaperScope, value: string): paper.Color => new scope.Color(value);

const paintLine = (
  scope: paper.PaperScope,
  shape: paper.Path,
  { role }: PathItem,
  { theme, zoom, chosen }: Look,
): void => {
  const { width, dash } = LINE_STYLES[role];
  const fill = theme.fill(role);
  const pixels = Math.max(THINNEST, width * PIXELS_PER_MM) + (chosen && dash.length === 0 ? CHOSEN_EXTRA : 0);
  shape.strokeColor = colour(scope, chosen ? theme.chosen : theme.line(role));
  shape.fillColor = fill === null ? null : colour(scope, chosen ? theme.chosenFill : fill);
  shape.strokeWidth = pixels / zoom;
  shape.strokeJoin = 'round';
  shape.dashArray = dash.map((length) => (length * PIXELS_PER_MM) / zoom);
};

/** Font size on screen, pixels. */
const textPixels = (height: number, zoom: number): number =>
  Math.min(TEXT_PIXELS.most, Math.max(TEXT_PIXELS.least, height * zoom));

const paintText = (scope: paper.PaperScope, shape: paper.PointText, item: TextItem, look: Look): void => {
  const size = textPixels(item.height, look.zoom);
  shape.visible = item.role !== 'note' || item.height * look.zoom >= SMALLEST_NOTE;
  shape.fillColor = colour(scope, look.chosen ? look.theme.chosen : look.theme.line(item.role));
  shape.fontSize = size;
  shape.matrix = new scope.Matrix()
    .translate(new scope.Point(item.at.x, item.at.y))
    .rotate(item.angle * DEGREES, new scope.Point(0, 0))
    .scale(1 / look.zoom)
    .translate(new scope.Point(0, (CAPITAL_HEIGHT / 2) * size));
};

/** Gives a shape the colours, weights and sizes of its item as it is seen now. */
export const paintItem = (scope: paper.PaperScope, shape: paper.Item, item: Item, look: Look): void => {
  if (item.kind === 'path') paintLine(scope, shape as paper.Path, item, look);
  else paintText(scope, shape as paper.PointText, item, look);
};

/** A new text shape; its place and size come with `paintItem`. */
export const makeText = (scope: paper.PaperScope, { text, anchor, role }: TextItem): paper.PointText =>
  new scope.PointText({
    insert: false,
    content: text,
    justification: anchor === 'start' ? 'left' : anchor === 'end' ? 'right' : 'center',
    fontFamily: '"DejaVu Sans Condensed", sans-serif',
    fontWeight: isBold(role) ? 'bold' : 'normal',
  });
