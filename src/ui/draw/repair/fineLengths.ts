import { formatLength, type LengthStyle } from '../../../core/units/formatLength';
import { withSign } from '../../withSign';

/** Figures that are read against a quarter of a millimetre: a hundredth of one, or a thousandth of an inch. */
const STYLES = { mm: { unit: 'mm', decimals: 2 }, in: { unit: 'in', decimals: 3 } } as const;

/** "0.79" */
export const fine = (mm: number, unit: LengthStyle['unit']): string => formatLength(mm, STYLES[unit]);

/** "+0.79", "−0.16" */
export const signedFine = (mm: number, unit: LengthStyle['unit']): string => withSign(mm, fine(Math.abs(mm), unit));
