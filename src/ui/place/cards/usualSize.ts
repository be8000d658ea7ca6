import type { ErrorSource } from '../../../core/budget/errorSources';
import { formatLength, type LengthStyle } from '../../../core/units/formatLength';

/** The usual size of an error as its box takes it: degrees, per cent, or a length. */
export const usualSize = ({ id, usual }: ErrorSource, style: LengthStyle): string => {
  if (id === 'placeSquare') return ((usual * 180) / Math.PI).toFixed(1);
  if (id === 'placePaper' || id === 'placePrint') return (usual * 100).toFixed(1);
  return style.unit === 'mm'
    ? formatLength(usual, { unit: 'mm', decimals: 2 })
    : formatLength(usual, { unit: 'in', decimals: 3 });
};
