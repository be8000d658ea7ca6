import { formatLength } from '../../../units/formatLength';

/** Diameters, widths and settings as a calliper reads them, without a sign: hundredths of a millimetre, thousandths of an inch. */
export const fineLength = (mm: number, unit: 'mm' | 'in'): string =>
  formatLength(mm, unit === 'mm' ? { unit, decimals: 2 } : { unit, decimals: 3 });
