import type { PrintCorrection } from './proof/types';

/** What a page was multiplied by, across and along; said on every page, also when it is nothing. */
export const factorWords = (correction: PrintCorrection | null): string =>
  correction === null
    ? 'no print correction (1.000 × 1.000)'
    : `print correction ${correction.factorX.toFixed(4)} × ${correction.factorY.toFixed(4)}`;

/** When a correction was read, and that it was kept although a reprint was advised. */
export const readWords = ({ date, againstAdvice }: Pick<PrintCorrection, 'date' | 'againstAdvice'>): string =>
  againstAdvice === true ? `${date}, kept against advice` : date;

/** The same with the printer that it is for, and when that was read. */
export const correctionWords = (correction: PrintCorrection | null, name = correction?.name): string =>
  correction === null ? factorWords(null) : `${factorWords(correction)}, ${name}, ${readWords(correction)}`;
