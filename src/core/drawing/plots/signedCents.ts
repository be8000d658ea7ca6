import { roundDecimal } from '../../units/roundDecimal';

/** Cents to a tenth with their sign, as beside a bar: "+2.2", "−0.7", "0.0". */
export const signedCents = (cents: number): string => {
  const rounded = roundDecimal(cents, 1);
  return `${rounded > 0 ? '+' : rounded < 0 ? '−' : ''}${Math.abs(rounded).toFixed(1)}`;
};
