import { isBold, LINE_STYLES } from '../../core/drawing/lineStyles';
import type { Item, Layer, PathItem, TextItem } from '../../core/drawing/types';
import type { FileDrawing } from '../../core/ports';
import { ok, type Result } from '../../core/result';
import { CAPITAL_HEIGHT } from '../../core/text/capitalHeight';
import { checkItems } from '../checkItems';
import { circleOf } from '../circleOf';
import { drawingFrame } from '../drawingFrame';
import { escapeXml } from './escapeXml';
import { pathData, svgNumber } from './pathData';

const FONTS = "'DejaVu Sans Condensed', 'DejaVu Sans', sans-serif";

const attributes = (values: Readonly<Record<string, string | number | null>>): string =>
  Object.entries(values)
    .flatMap(([name, value]) =>
      value === null ? [] : [` ${name}="${typeof value === 'number' ? svgNumber(value) : escapeXml(value)}"`],
    )
    .join('');

const shape = ({ role, path }: PathItem): string => {
  const { width, dash, fill } = LINE_STYLES[role];
  const grey = Math.round((fill ?? 0) * 255);
  const look = attributes({
    class: role,
    fill: fill === null ? null : `rgb(${grey},${grey},${grey})`,
    'stroke-width': width,
    'stroke-dasharray': dash.length === 0 ? null : dash.map(svgNumber).join(' '),
  });
  const circle = circleOf(path);
  if (circle === null) return `<path${look}${attributes({ d: pathData(path) })}/>`;
  const { centre, radius } = circle;
  return `<circle${look}${attributes({ cx: centre.x, cy: centre.y, r: radius })}/>`;
};

const words = ({ role, at, text, height, anchor, angle }: TextItem): string => {
  const degrees = svgNumber((angle * 180) / Math.PI);
  const place = attributes({
    class: role,
    x: at.x,
    y: at.y + (CAPITAL_HEIGHT / 2) * height,
    'font-size': height,
    'font-weight': isBold(role) ? 'bold' : null,
    'text-anchor': anchor === 'start' ? null : anchor,
    transform: degrees === '0' ? null : `rotate(${degrees} ${svgNumber(at.x)} ${svgNumber(at.y)})`,
    stroke: 'none',
    fill: '#000',
  });
  return `<text${place}>${escapeXml(text)}</text>`;
};

const group = (layer: Layer, items: readonly Item[]): string => {
  const look = attributes({
    id: layer,
    fill: 'none',
    stroke: '#000',
    'stroke-linejoin': 'round',
    'font-family': items.some(({ kind }) => kind === 'text') ? FONTS : null,
  });
  const lines = items.map((item) => `    ${item.kind === 'path' ? shape(item) : words(item)}\n`);
  return `  <g${look}>\n${lines.join('')}  </g>\n`;
};

/**
 * A drawing as SVG 1.1 at true size: width and height in mm, user units of 1 mm in the drawing's own frame, a group a layer,
 * circles and arcs as such, text as text. Nothing in it runs, and it refers to nothing outside. Codes: as checkItems.
 */
export const makeSvg = ({ title, description, items }: FileDrawing): Result<string> => {
  const checked = checkItems(items);
  if (!checked.ok) return checked;
  const { minX, minY, maxX, maxY } = drawingFrame(items);
  const [width, height] = [maxX - minX, maxY - minY];
  const layers = [...new Set(items.map(({ layer }) => layer))];
  const root = attributes({
    xmlns: 'http://www.w3.org/2000/svg',
    version: '1.1',
    width: `${svgNumber(width)}mm`,
    height: `${svgNumber(height)}mm`,
    viewBox: [minX, minY, width, height].map(svgNumber).join(' '),
  });
  return ok(
    [
      '<?xml version="1.0" encoding="UTF-8"?>\n',
      `<svg${root}>\n`,
      `  <title>${escapeXml(title)}</title>\n`,
      `  <desc>${escapeXml(description)}</desc>\n`,
      ...layers.map((name) =>
        group(
          name,
          items.filter(({ layer }) => layer === name),
        ),
      ),
      '</svg>\n',
    ].join(''),
  );
};
