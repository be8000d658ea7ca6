import { MM_PER_INCH } from '../../units/mmPerInch';

/** A gap as feeler gauges are marked, in both units: "0.34 mm (0.013 in)". mm, at least 0. */
export const gapText = (mm: number): string => `${mm.toFixed(2)} mm (${(mm / MM_PER_INCH).toFixed(3)} in)`;
