import { MM_PER_INCH } from './mmPerInch';
import { roundDecimal } from './roundDecimal';

/** How a length is written: decimals stay fixed ("645.10"), fractions are reduced ("25 3/8"). */
export type LengthStyle =
  | { readonly unit: 'mm'; readonly decimals: number }
  | { readonly unit: 'in'; readonly decimals: number }
  | { readonly unit: 'in'; readonly denominator: 8 | 16 | 32 | 64 };

/** A kilometre: beyond it there is no instrument, and a double would soon need an exponent. */
const LONGEST_MM = 1e6;

/** Decimals a length may show; a millionth of a millimetre is far below what can be read. */
const MOST_DECIMALS = 6;

/**
 * A length as text, without a unit sign. Never "-0", never an exponent. Half a step goes away from zero.
 *
 * @param mm millimetres, within ±1 000 000
 * @throws RangeError when `mm` is not finite or too long, or the style asks for a step that does not exist
 */
export function formatLength(mm: number, style: LengthStyle): string {
  if (!Number.isFinite(mm) || Math.abs(mm) > LONGEST_MM)
    throw new RangeError(`Expected a length within ±${LONGEST_MM} mm, got ${mm}.`);
  if ('denominator' in style) return formatFraction(mm / MM_PER_INCH, style.denominator);
  if (!Number.isInteger(style.decimals) || style.decimals < 0 || style.decimals > MOST_DECIMALS)
    throw new RangeError(`Expected 0 to ${MOST_DECIMALS} decimals, got ${style.decimals}.`);
  const value = style.unit === 'in' ? mm / MM_PER_INCH : mm;
  return roundDecimal(value, style.decimals).toFixed(style.decimals);
}

function formatFraction(inches: number, denominator: number): string {
  if (![8, 16, 32, 64].includes(denominator))
    throw new RangeError(`Expected a denominator of 8, 16, 32 or 64, got ${denominator}.`);
  const steps = Math.abs(roundDecimal(inches * denominator, 0));
  const sign = inches < 0 && steps > 0 ? '-' : '';
  const whole = Math.floor(steps / denominator);
  let upper = steps % denominator;
  if (upper === 0) return `${sign}${whole}`;
  let lower = denominator;
  while (upper % 2 === 0) {
    upper /= 2;
    lower /= 2;
  }
  return whole === 0 ? `${sign}${upper}/${lower}` : `${sign}${whole} ${upper}/${lower}`;
}
