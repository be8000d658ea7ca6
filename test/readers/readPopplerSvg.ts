import type { LinesOfPage } from '../readback/deviations';
import { linesFromSteps, type Step } from './readPathData';

/** 1 pt = 1/72 in; pdftocairo's SVG keeps points. */
const MM_PER_POINT = 25.4 / 72;

/** The stroked lines of one page as pdftocairo -svg draws them, the page in the upper left corner. */
export const readPopplerSvg = (svg: string): LinesOfPage => ({
  paths: Array.from(svg.matchAll(/<path\s[^>]*stroke-width[^>]*>/gu), ([element]) => element).flatMap((element) => {
    const data = attribute(element, 'd');
    const [a, b, c, d, e, f] =
      /^matrix\(([^)]*)\)$/u.exec(attribute(element, 'transform'))?.[1]?.split(',').map(Number) ?? [];
    if (a === undefined || b === undefined || c === undefined || d === undefined || e === undefined || f === undefined)
      throw new Error(`expected a line with a matrix, got ${element.slice(0, 200)}`);
    return linesFromSteps(readSteps(data), (x, y) => ({
      x: (a * x + c * y + e) * MM_PER_POINT,
      y: (b * x + d * y + f) * MM_PER_POINT,
    }));
  }),
});

const attribute = (element: string, name: string): string =>
  new RegExp(`\\s${name}="([^"]*)"`, 'u').exec(element)?.[1] ?? '';

/** cairo writes M, L, C and Z, each with its letter, absolute. */
function readSteps(data: string): readonly Step[] {
  return Array.from(data.matchAll(/([A-Za-z])([^A-Za-z]*)/gu), ([, letter, numbers = '']): Step => {
    const [a = Number.NaN, b = Number.NaN, c = Number.NaN, d = Number.NaN, e = Number.NaN, f = Number.NaN] = numbers
      .trim()
      .split(/[\s,]+/u)
      .map(Number);
    if (letter === 'M') return { kind: 'move', to: [a, b] };
    if (letter === 'L') return { kind: 'line', to: [a, b] };
    if (letter === 'C') return { kind: 'curve', to: [a, b, c, d, e, f] };
    if (letter === 'Z') return { kind: 'close' };
    throw new Error(`this reader does not know the path letter ${letter}`);
  });
}
