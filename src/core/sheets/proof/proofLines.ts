import { squareSide } from '../calibrationSquare';
import { frameOf } from '../frame';
import { longLineLengths } from '../longLines';
import type { Page } from '../types';

/** What a page offers to prove it by, at the lengths that were drawn, mm. */
export interface ProofLines {
  readonly across: number;
  readonly along: number;
  /** Of the calibration square, corner to corner. */
  readonly diagonal: number;
}

/** The long lines of a page of this size, and the square's diagonal. margin: white at every edge, where it is not the usual, mm. */
export const proofLines = (
  { width, height }: Pick<Page, 'width' | 'height'>,
  unit: 'mm' | 'in',
  margin?: number,
): ProofLines => ({
  ...longLineLengths(frameOf(width, height, margin), unit),
  diagonal: squareSide(unit) * Math.SQRT2,
});
