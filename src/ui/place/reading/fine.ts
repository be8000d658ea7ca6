import { formatLength, type LengthStyle } from '../../../core/units/formatLength';

/** A small length, finer than others are shown: "0.25 mm", "0.010″". */
export const fine = (mm: number, style: LengthStyle): string =>
  style.unit === 'mm'
    ? `${formatLength(mm, { unit: 'mm', decimals: 2 })} mm`
    : `${formatLength(mm, { unit: 'in', decimals: 3 })}″`;
