import type { PrintCorrection } from './proof/types';

/** What a page was multiplied by, across and along; said on every page, also when it is nothing. */
export const factorWords = (correction: PrintCorrection | null): string =>
  correction === null
    ? 'no print correction (1.000 × 1.000)'
    : `print correction ${correction.factorX.toFixed(4)} × ${correction.factorY.toFixed(4)}`;

/** The same with the printer that it is for, and when that was read. */
export const correctionWords = (correction: PrintCorrection | null): string =>
  correction === null ? factorWords(null) : `${factorWords(correction)}, ${correction.name}, ${correction.date}`;
