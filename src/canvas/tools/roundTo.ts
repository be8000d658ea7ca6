import type { LengthStyle } from '../../core/units/formatLength';
import { MM_PER_INCH } from '../../core/units/mmPerInch';

/** Rounds a dragged figure, mm, to what the maker reads: 0.1 mm, or 1/64 or 0.005 in. */
export const roundTo = (style: LengthStyle): ((mm: number) => number) => {
  // By division where the step has no exact value: 0.1 × 3 is not 0.3.
  const perMm = style.unit === 'mm' ? 10 : ('denominator' in style ? 64 : 200) / MM_PER_INCH;
  return (mm) => {
    const rounded = Math.round(mm * perMm) / perMm;
    return rounded === 0 ? 0 : rounded;
  };
};
