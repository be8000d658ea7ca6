import { formatLength, type LengthStyle } from './formatLength';

/** A length with its unit sign for a reader: "600.0 mm", "23 5/8″". */
export const showLength = (mm: number, style: LengthStyle): string =>
  style.unit === 'mm' ? `${formatLength(mm, style)} mm` : `${formatLength(mm, style)}″`;
