import type { PrintFactor } from './types';

/** A setting moves both ways by the same: they may differ by this much. As `solvePrintFactor` takes it. */
const ALIKE = 0.01;
/** A sheet that went in askew is mended by no factor: out of square by less than this, degrees. */
const SQUARE = 0.15;

/**
 * Whether a print that ought to be made anew could be mended by its factors all the same: it is too large, or too small, by
 * the same share both ways, and square. For makers whose setting cannot be changed.
 */
export const mayKeepAnyway = ({ verdict, factorX, factorY, skewDeg }: PrintFactor): boolean =>
  verdict === 'reprint' &&
  Math.sign(factorX - 1) === Math.sign(factorY - 1) &&
  Math.abs(1 / factorX - 1 / factorY) <= ALIKE &&
  Math.abs(skewDeg) <= SQUARE;
