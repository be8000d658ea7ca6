import type { Path, Point } from '../../core/geom/types';
import { ellipseArc } from '../ellipseArc';
import { IMPORT_LIMITS } from '../importLimits';
import { applyMatrix, compose, type Matrix, moved, scaled } from '../matrix';
import { pathData } from './pathData';
import type { SvgElement } from './readSvgTree';
import { readNumbers } from './readTransform';
import { roundedBox } from './roundedBox';
import { inPixels, svgLength } from './svgLength';
import type { Viewport } from './viewport';

/** The paths of a shape, or why there are none, in words that go with "a shape". */
export type ShapePieces = { readonly paths: readonly Path[] } | { readonly why: string };

const NONE: ShapePieces = { paths: [] };
export const ODD_UNIT = 'told in a unit that depends on type or window (em, ex, vw)';
const DAMAGED = 'with damaged numbers';

const ellipse = (matrix: Matrix, x: number, y: number, rx: number, ry: number): ShapePieces => {
  if (!(rx > 0 && ry > 0)) return NONE;
  const placed = compose(matrix, compose(moved(x, y), scaled(rx, ry)));
  const start = applyMatrix(placed, { x: 1, y: 0 });
  return { paths: [{ start, segments: ellipseArc(placed, 0, 2 * Math.PI, start), closed: true }] };
};

const polyline = (matrix: Matrix, text: string, closed: boolean): ShapePieces => {
  if (text.length > IMPORT_LIMITS.pathData) return { why: 'with too many points' };
  const numbers = readNumbers(text);
  if (numbers === null) return { why: DAMAGED };
  const points: Point[] = [];
  for (let at = 0; at + 1 < numbers.length; at += 2)
    points.push(applyMatrix(matrix, { x: numbers[at] ?? 0, y: numbers[at + 1] ?? 0 }));
  const [start, ...rest] = points;
  if (start === undefined || rest.length === 0) return NONE;
  return { paths: [{ start, segments: rest.map((to) => ({ kind: 'line', to })), closed }] };
};

/** What a basic shape or path draws under a matrix (SVG 2, 9 and 10); null for an element that is not a shape. */
export const shapePieces = (
  { name, attributes }: SvgElement,
  matrix: Matrix,
  viewport: Viewport,
  dpi: number,
): ShapePieces | null => {
  const { width: wide, height: high } = viewport;
  const diagonal = Math.hypot(wide, high) / Math.SQRT2;
  /** undefined when it is not there or not a length; NaN in a unit that is not known. */
  const given = (key: string, whole: number): number | undefined => {
    const length = svgLength(attributes.get(key));
    return length === null ? undefined : inPixels(length, whole, dpi);
  };
  const pair = (x: string, y: string): [number, number] => [given(x, wide) ?? 0, given(y, high) ?? 0];
  /** Two radii of which either stands for the other when it is not there, or below 0. */
  const radii = (): [number, number] => {
    const positive = (value: number | undefined): number | undefined =>
      value !== undefined && value < 0 ? undefined : value;
    const [rx, ry] = [positive(given('rx', wide)), positive(given('ry', high))];
    return [rx ?? ry ?? 0, ry ?? rx ?? 0];
  };
  const known = (numbers: readonly number[], draw: () => ShapePieces): ShapePieces =>
    numbers.some(Number.isNaN) ? { why: ODD_UNIT } : draw();
  switch (name) {
    case 'path': {
      const data = attributes.get('d') ?? '';
      if (data.length > IMPORT_LIMITS.pathData) return { why: 'with too much path data' };
      const paths = pathData(data, matrix);
      return paths === null ? { why: DAMAGED } : { paths };
    }
    case 'rect': {
      const [x, y] = pair('x', 'y');
      const [width, height] = pair('width', 'height');
      const [rx, ry] = radii();
      return known([x, y, width, height, rx, ry], () => ({ paths: roundedBox(matrix, x, y, width, height, rx, ry) }));
    }
    case 'circle': {
      const [x, y] = pair('cx', 'cy');
      const r = given('r', diagonal) ?? 0;
      return known([x, y, r], () => ellipse(matrix, x, y, r, r));
    }
    case 'ellipse': {
      const [x, y] = pair('cx', 'cy');
      const [rx, ry] = radii();
      return known([x, y, rx, ry], () => ellipse(matrix, x, y, rx, ry));
    }
    case 'line': {
      const [[x1, y1], [x2, y2]] = [pair('x1', 'y1'), pair('x2', 'y2')];
      const [start, to] = [applyMatrix(matrix, { x: x1, y: y1 }), applyMatrix(matrix, { x: x2, y: y2 })];
      return known([x1, y1, x2, y2], () => ({ paths: [{ start, segments: [{ kind: 'line', to }], closed: false }] }));
    }
    case 'polyline':
    case 'polygon':
      return polyline(matrix, attributes.get('points') ?? '', name === 'polygon');
    default:
      return null;
  }
};
