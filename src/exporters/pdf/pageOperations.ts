import { isBold, LINE_STYLES, type LineStyle } from '../../core/drawing/lineStyles';
import type { Item, PathItem, TextItem } from '../../core/drawing/types';
import { pathToCubics } from '../../core/geom/pathToCubics';
import type { Path, Point, Segment } from '../../core/geom/types';
import type { Cut } from '../../core/text/advanceWidth';
import { CAPITAL_HEIGHT } from '../../core/text/capitalHeight';
import { measureText } from '../../core/text/measureText';
import { printableText } from '../../core/text/printableText';

/** One step of drawing a page. Lengths and places in mm from the top left of the page, y down. */
export type PageOperation =
  | { readonly kind: 'pen'; readonly width: number; readonly dash: readonly number[] }
  /** 0 black, 1 white. */
  | { readonly kind: 'fill'; readonly grey: number }
  | { readonly kind: 'move'; readonly to: Point }
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'curve'; readonly c1: Point; readonly c2: Point; readonly to: Point }
  | { readonly kind: 'close' }
  | { readonly kind: 'paint'; readonly filled: boolean }
  /** start: left end of the baseline; height: font size; angle: radians, + clockwise as seen. */
  | {
      readonly kind: 'text';
      readonly start: Point;
      readonly text: string;
      readonly height: number;
      readonly cut: Cut;
      readonly angle: number;
    };

/**
 * A display list as the steps that draw it; a pen is named only where it changes.
 *
 * @throws RangeError when a path or a text's height is not valid
 */
export function pageOperations(items: readonly Item[]): readonly PageOperation[] {
  const operations: PageOperation[] = [];
  let held: LineStyle | undefined;
  for (const item of items) {
    if (item.kind === 'text') operations.push(...textOperations(item));
    else {
      const style = LINE_STYLES[item.role];
      if (style.width !== held?.width || style.dash !== held.dash)
        operations.push({ kind: 'pen', width: style.width, dash: style.dash });
      held = style;
      operations.push(...pathOperations(item, style));
    }
  }
  return operations;
}

function pathOperations({ path }: PathItem, { fill }: LineStyle): readonly PageOperation[] {
  const filling: PageOperation[] = fill === null ? [] : [{ kind: 'fill', grey: fill }];
  return [...filling, ...outlineOperations(pathToCubics(path)), { kind: 'paint', filled: fill !== null }];
}

function outlineOperations(path: Path): PageOperation[] {
  const closing: PageOperation[] = path.closed ? [{ kind: 'close' }] : [];
  return [{ kind: 'move', to: path.start }, ...path.segments.map(segmentOperation), ...closing];
}

function segmentOperation(segment: Segment): PageOperation {
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', to: segment.to };
    case 'cubic':
      return { kind: 'curve', c1: segment.c1, c2: segment.c2, to: segment.to };
    case 'arc':
      throw new RangeError('pageOperations: an arc was left after the path was turned into cubics');
  }
}

/** Part of the text's width that lies before its anchor. */
const BEFORE_ANCHOR = { start: 0, middle: 0.5, end: 1 } as const;

function textOperations({ at, text, height, anchor, angle, role }: TextItem): PageOperation[] {
  const printable = printableText(text);
  if (printable === '') return [];
  const cut = isBold(role) ? 'bold' : 'regular';
  const back = BEFORE_ANCHOR[anchor] * measureText(printable, height, cut);
  const down = (CAPITAL_HEIGHT / 2) * height;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const start = { x: at.x - back * cos - down * sin, y: at.y - back * sin + down * cos };
  return [{ kind: 'text', start, text: printable, height, cut, angle }];
}
