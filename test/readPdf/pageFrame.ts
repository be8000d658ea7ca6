import type { Point, Segment } from '../../src/core/geom/types';
import type { ReadPath } from './types';

/** 1 pt = 1/72 in, ISO 32000-1 8.3.2.3; 1 in = 25.4 mm exactly. */
export const MM_PER_POINT = 25.4 / 72;

/** a b c d e f of a PDF: x' = a·x + c·y + e, y' = b·x + d·y + f. ISO 32000-1 8.3.3. */
export type Matrix = readonly [number, number, number, number, number, number];

export const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** The matrix that does `first`, then `then`. */
export const multiply = (first: Matrix, then: Matrix): Matrix => [
  first[0] * then[0] + first[1] * then[2],
  first[0] * then[1] + first[1] * then[3],
  first[2] * then[0] + first[3] * then[2],
  first[2] * then[1] + first[3] * then[3],
  first[4] * then[0] + first[5] * then[2] + then[4],
  first[4] * then[1] + first[5] * then[3] + then[5],
];

/** How much a matrix magnifies lengths. */
export const scaleOf = (matrix: Matrix): number => Math.sqrt(Math.abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]));

/** From a place in PDF points to mm from the top left of a page of this height in points, y down. */
export const placeOnPage =
  (matrix: Matrix, pageHeight: number) =>
  (x: number, y: number): Point => ({
    x: (matrix[0] * x + matrix[2] * y + matrix[4]) * MM_PER_POINT,
    y: (pageHeight - (matrix[1] * x + matrix[3] * y + matrix[5])) * MM_PER_POINT,
  });

/** A path as it is being read. */
export interface Outline {
  readonly start: Point;
  readonly segments: Segment[];
  closed: boolean;
}

/** Finishes outlines with the pen that drew them. */
export const finishPaths = (
  outlines: readonly Outline[],
  pen: Pick<ReadPath, 'stroked' | 'filled' | 'width' | 'dash'>,
): ReadPath[] =>
  outlines.map((outline) => ({
    ...outline,
    ...pen,
    points: [outline.start, ...outline.segments.map(({ to }) => to)],
  }));
