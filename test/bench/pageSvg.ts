import type { Page } from '../../src/core/sheets/types';
import { type PageOperation, pageOperations } from '../../src/exporters/pdf/pageOperations';

/** Lengths to 0.001 µm, finer than the PDF has them. */
const number = (value: number): string => String(Number(value.toFixed(6)));

const numbers = (...values: readonly number[]): string => values.map(number).join(' ');

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

const greyOf = (grey: number): string =>
  `rgb(${Array(3)
    .fill(Math.round(255 * grey))
    .join(',')})`;

const textElement = ({ start, text, height, cut, angle }: PageOperation & { kind: 'text' }): string => {
  const turn = `translate(${numbers(start.x, start.y)}) rotate(${number((angle * 180) / Math.PI)})`;
  return `<text transform="${turn}" font-size="${number(height)}" font-weight="${cut}">${escaped(text)}</text>`;
};

/** A page as SVG, from the very steps that the PDF is written from: the same lines, curves and words for another program. */
export function pageSvg({ width, height, items }: Page): string {
  const elements: string[] = [];
  let pen = '';
  let fill = '';
  let outline = '';
  for (const operation of pageOperations(items)) {
    switch (operation.kind) {
      case 'pen':
        pen = `stroke-width="${number(operation.width)}" stroke-dasharray="${numbers(...operation.dash) || 'none'}"`;
        break;
      case 'fill':
        fill = greyOf(operation.grey);
        break;
      case 'move':
        outline += `M${numbers(operation.to.x, operation.to.y)}`;
        break;
      case 'line':
        outline += `L${numbers(operation.to.x, operation.to.y)}`;
        break;
      case 'curve': {
        const { c1, c2, to } = operation;
        outline += `C${numbers(c1.x, c1.y, c2.x, c2.y, to.x, to.y)}`;
        break;
      }
      case 'close':
        outline += 'Z';
        break;
      case 'paint':
        elements.push(`<path d="${outline}" fill="${operation.filled ? fill : 'none'}" stroke="#000" ${pen}/>`);
        outline = '';
        break;
      case 'text':
        elements.push(textElement(operation).replace('"regular"', '"normal"'));
    }
  }
  const size = `width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${numbers(width, height)}"`;
  const style = 'stroke-linejoin="round" font-family="DejaVu Sans Condensed"';
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size} ${style}>\n${elements.join('\n')}\n</svg>\n`;
}
