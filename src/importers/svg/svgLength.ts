import { MM_PER_INCH } from '../../core/units/mmPerInch';

/** A length as SVG writes it; the unit in small letters, '' for none. */
export interface SvgLength {
  readonly value: number;
  readonly unit: string;
}

const LENGTH = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-z]*|%)\s*$/i;

/** A length, or null when it is not one. */
export const svgLength = (text: string | undefined): SvgLength | null => {
  if (text === undefined || text.length > 100) return null;
  const [, value, unit = ''] = LENGTH.exec(text) ?? [];
  return value === undefined ? null : { value: Number(value), unit: unit.toLowerCase() };
};

/** mm to one unit of paper: 1 in = 2.54 cm = 72 pt = 6 pc = 101.6 Q (CSS Values and Units, 5.2). */
export const PAPER_UNITS: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: MM_PER_INCH,
  pt: MM_PER_INCH / 72,
  pc: MM_PER_INCH / 6,
  q: 0.25,
};

/**
 * A length in pixels: of `whole` when it is a percentage, at `dpi` pixels an inch when it has a unit of paper. NaN for
 * units that depend on type or window (em, ex, vw), which a drawing on its own does not settle.
 */
export const inPixels = ({ value, unit }: SvgLength, whole: number, dpi: number): number => {
  if (unit === '' || unit === 'px') return value;
  if (unit === '%') return (value / 100) * whole;
  const mm = PAPER_UNITS[unit];
  return mm === undefined ? Number.NaN : (value * mm * dpi) / MM_PER_INCH;
};
