import { formatLength, type LengthStyle } from '../../units/formatLength';
import { MM_PER_INCH } from '../../units/mmPerInch';
import { roundDecimal } from '../../units/roundDecimal';

/** A division of an axis: the length it stands for, mm, and its figure. */
export interface Tick {
  readonly mm: number;
  readonly text: string;
}

/** How far apart divisions lie on paper at the least, mm: wide enough for a figure between two others. */
const LEAST_PITCH = 7.5;

const MM_STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];
const INCH_STEPS = [0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];
const INCH_FRACTIONS = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 4];

/** Least decimals that write a multiple of the step in full. */
const decimalsOf = (step: number): number => [0, 1, 2].find((decimals) => roundDecimal(step, decimals) === step) ?? 3;

/** The divisions' step in the unit of the style, the length of that unit, and how a multiple is written. */
const divisionOf = (
  scale: number,
  style: LengthStyle,
): { readonly step: number; readonly unit: number; readonly written: LengthStyle } => {
  const unit = style.unit === 'mm' ? 1 : MM_PER_INCH;
  const steps = style.unit === 'mm' ? MM_STEPS : 'denominator' in style ? INCH_FRACTIONS : INCH_STEPS;
  const step = steps.find((each) => each * unit * scale >= LEAST_PITCH) ?? steps.at(-1) ?? 1;
  if ('denominator' in style) return { step, unit, written: { unit: 'in', denominator: 64 } };
  const decimals = decimalsOf(step);
  return { step, unit, written: style.unit === 'mm' ? { unit: 'mm', decimals } : { unit: 'in', decimals } };
};

/**
 * Round divisions from the last one at or below `low` to the first at or above `high`, mm: whole, half or fifth parts of
 * a unit, or halves of halves of an inch where inches are written as fractions.
 *
 * @param scale mm of paper for each mm of length
 */
export const roundTicks = (low: number, high: number, scale: number, style: LengthStyle): readonly Tick[] => {
  const { step, unit, written } = divisionOf(scale, style);
  // A bound that is a multiple but for rounding is that multiple.
  const first = Math.floor(low / unit / step + 1e-9);
  const last = Math.ceil(high / unit / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const mm = (first + index) * step * unit;
    return { mm, text: formatLength(mm, written).replace('-', '−') };
  });
};
