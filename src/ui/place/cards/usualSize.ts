import type { ErrorSource } from '../../../core/budget/errorSources';

/** The usual size of an error as its box takes it: degrees, per cent, or mm. */
export const usualSize = ({ id, usual }: ErrorSource): string => {
  if (id === 'placeSquare') return ((usual * 180) / Math.PI).toFixed(1);
  if (id === 'placePaper' || id === 'placePrint') return String(Number((usual * 100).toFixed(3)));
  return usual.toFixed(2);
};
