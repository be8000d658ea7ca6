import type { LengthStyle } from '../../../units/formatLength';
import { MM_PER_INCH } from '../../../units/mmPerInch';

/** An area with its unit sign for a reader: "4035 mm²", "6.25 in²". */
export const showArea = (area: number, unit: LengthStyle['unit']): string =>
  unit === 'mm' ? `${area.toFixed(0)} mm²` : `${(area / MM_PER_INCH ** 2).toFixed(2)} in²`;
