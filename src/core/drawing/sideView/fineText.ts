import { MM_PER_INCH } from '../../units/mmPerInch';

/** Gaps and fits as they are gauged, without a sign: hundredths of a millimetre, thousandths of an inch. */
export const fineText = (mm: number, unit: 'mm' | 'in'): string =>
  unit === 'mm' ? mm.toFixed(2) : (mm / MM_PER_INCH).toFixed(3);
