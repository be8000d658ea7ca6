import type { DrawingScale, ImportedOutlines } from '../../core/ports';
import { MM_PER_INCH } from '../../core/units/mmPerInch';

/** One answer to how large a drawing is. */
export interface ScaleChoice {
  readonly id: string;
  readonly label: string;
  /** null for a length that the maker gives. */
  readonly scale: DrawingScale | null;
  /** Size of the outline offered first with this answer, mm; null when it is not known. */
  readonly size: { readonly across: number; readonly along: number } | null;
}

const UNITS = [
  { unit: 'mm', label: 'Millimetres', mm: 1 },
  { unit: 'cm', label: 'Centimetres', mm: 10 },
  { unit: 'in', label: 'Inches', mm: MM_PER_INCH },
] as const;

const DPI = [
  { dpi: 72, label: '72 pixels to an inch' },
  { dpi: 90, label: '90 pixels to an inch' },
  { dpi: 96, label: '96 pixels to an inch' },
] as const;

/** The answers that fit what a file leaves open, each with the size that it leads to. `plain`: the file as it says itself. */
export const scaleChoices = ({ needs, outlines, perUnit }: ImportedOutlines): readonly ScaleChoice[] => {
  const [first] = outlines;
  const sizeAt = (mm: number): ScaleChoice['size'] =>
    first === undefined ? null : { across: (first.across * mm) / perUnit, along: (first.along * mm) / perUnit };
  const byLength: ScaleChoice = { id: 'length', label: 'By a known length', scale: null, size: null };
  if (needs === null)
    return [{ id: 'file', label: 'As the file says', scale: { by: 'file' }, size: sizeAt(perUnit) }, byLength];
  if (needs === 'dpi') {
    const byDpi = DPI.map(({ dpi, label }): ScaleChoice => {
      return { id: `dpi-${dpi}`, label, scale: { by: 'dpi', dpi }, size: sizeAt(MM_PER_INCH / dpi) };
    });
    return [...byDpi, byLength];
  }
  const byUnit = UNITS.map(({ unit, label, mm }): ScaleChoice => {
    return { id: `unit-${unit}`, label, scale: { by: 'unit', unit }, size: sizeAt(mm) };
  });
  return needs === 'size' ? [byLength, ...byUnit] : [...byUnit, byLength];
};
