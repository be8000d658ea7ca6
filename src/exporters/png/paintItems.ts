import { isBold, LINE_STYLES } from '../../core/drawing/lineStyles';
import type { Item, PathItem, TextItem } from '../../core/drawing/types';
import { arcGeometry } from '../../core/geom/arcGeometry';
import type { Bounds, Path } from '../../core/geom/types';
import { CAPITAL_HEIGHT } from '../../core/text/capitalHeight';

/** What is needed of a canvas, on the page or off it. */
export type Canvas2D = Pick<
  OffscreenCanvasRenderingContext2D,
  | 'setTransform'
  | 'beginPath'
  | 'moveTo'
  | 'lineTo'
  | 'arc'
  | 'bezierCurveTo'
  | 'closePath'
  | 'fill'
  | 'stroke'
  | 'fillRect'
  | 'fillText'
  | 'setLineDash'
  | 'fillStyle'
  | 'strokeStyle'
  | 'lineWidth'
  | 'lineJoin'
  | 'font'
  | 'textAlign'
  | 'textBaseline'
>;

const ALIGN = { start: 'left', middle: 'center', end: 'right' } as const;

const trace = (canvas: Canvas2D, { start, segments, closed }: Path): void => {
  canvas.beginPath();
  canvas.moveTo(start.x, start.y);
  let from = start;
  for (const segment of segments) {
    const { to } = segment;
    if (segment.kind === 'line') canvas.lineTo(to.x, to.y);
    else if (segment.kind === 'cubic')
      canvas.bezierCurveTo(segment.c1.x, segment.c1.y, segment.c2.x, segment.c2.y, to.x, to.y);
    else {
      const { radius, startAngle, sweep } = arcGeometry(from, segment);
      canvas.arc(segment.centre.x, segment.centre.y, radius, startAngle, startAngle + sweep, !segment.clockwise);
    }
    from = to;
  }
  if (closed) canvas.closePath();
};

const paintPath = (canvas: Canvas2D, { role, path }: PathItem): void => {
  const { width, dash, fill } = LINE_STYLES[role];
  trace(canvas, path);
  if (fill !== null) {
    const grey = Math.round(fill * 255);
    canvas.fillStyle = `rgb(${grey},${grey},${grey})`;
    canvas.fill();
  }
  canvas.lineWidth = width;
  canvas.setLineDash([...dash]);
  canvas.stroke();
};

/** In pixels, since a browser rounds the letters of a font of 3 pixels before it enlarges them. */
const paintText = (canvas: Canvas2D, item: TextItem, frame: Bounds, perMm: number, family: string): void => {
  const { at, text, height, anchor, angle, role } = item;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  canvas.setTransform(cos, sin, -sin, cos, (at.x - frame.minX) * perMm, (at.y - frame.minY) * perMm);
  canvas.font = `${isBold(role) ? 'bold ' : ''}${height * perMm}px ${family}`;
  canvas.textAlign = ALIGN[anchor];
  canvas.textBaseline = 'alphabetic';
  canvas.fillStyle = '#000';
  canvas.fillText(text, 0, (CAPITAL_HEIGHT / 2) * height * perMm);
};

/**
 * Paints a display list on white, `frame` (mm) at the top left.
 *
 * @param perMm pixels to a millimetre
 * @param family of the font, as CSS has it
 */
export const paintItems = (
  canvas: Canvas2D,
  items: readonly Item[],
  frame: Bounds,
  perMm: number,
  family: string,
): void => {
  canvas.setTransform(perMm, 0, 0, perMm, -frame.minX * perMm, -frame.minY * perMm);
  canvas.fillStyle = '#fff';
  // A pixel more on every side, for a frame that does not end with a whole one.
  const over = 1 / perMm;
  const [width, height] = [frame.maxX - frame.minX, frame.maxY - frame.minY];
  canvas.fillRect(frame.minX - over, frame.minY - over, width + 2 * over, height + 2 * over);
  canvas.strokeStyle = '#000';
  canvas.lineJoin = 'round';
  for (const item of items) {
    if (item.kind === 'text') paintText(canvas, item, frame, perMm, family);
    else {
      canvas.setTransform(perMm, 0, 0, perMm, -frame.minX * perMm, -frame.minY * perMm);
      paintPath(canvas, item);
    }
  }
};
