import type { Bounds } from '../../src/core/geom/types';
import type { ReadPath, ReadText } from '../readPdf/types';

/** Highest ascender and lowest descender of DejaVu Sans Condensed, shares of the size: b, d and p, q as drawn (from memory). */
const ASCENDER = 0.76;
const DESCENDER = 0.24;

type Corner = readonly [x: number, y: number];

const around = (corners: readonly Corner[]): Bounds => ({
  minX: Math.min(...corners.map(([x]) => x)),
  minY: Math.min(...corners.map(([, y]) => y)),
  maxX: Math.max(...corners.map(([x]) => x)),
  maxY: Math.max(...corners.map(([, y]) => y)),
});

/** The upright box about a text, by the width that the reader found. */
export function boxOfText({ start, width, height, angle }: ReadText): Bounds {
  if (width === null) throw new Error('expected a reader that tells the widths of texts');
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return around(
    [0, width].flatMap((along) =>
      [-ASCENDER * height, DESCENDER * height].map(
        (down): Corner => [start.x + along * cos - down * sin, start.y + along * sin + down * cos],
      ),
    ),
  );
}

/** The upright box about a line, its weight aside. Curves lie within the box about their handles. */
export const boxOfPath = ({ points, segments }: ReadPath): Bounds =>
  around(
    [...points, ...segments.flatMap((segment) => (segment.kind === 'cubic' ? [segment.c1, segment.c2] : []))].map(
      ({ x, y }): Corner => [x, y],
    ),
  );

/** Whether two boxes share more than their rims. */
export const overlap = (a: Bounds, b: Bounds): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
