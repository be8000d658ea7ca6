import type { Field } from '../core/document/fieldTypes';
import type { FieldValue } from '../core/document/fieldValue';
import { formatLength, type LengthStyle } from '../core/units/formatLength';
import { MM_PER_INCH } from '../core/units/mmPerInch';

/** At least `least` decimals, more where the value has them: a box never hides what was typed. */
const decimal = (mm: number, unit: 'mm' | 'in', least: number): string => {
  const text = formatLength(mm, unit === 'mm' ? { unit, decimals: 3 } : { unit, decimals: 4 });
  const [whole = '', part = ''] = text.split('.');
  const shown = part.replace(/0+$/, '').padEnd(least, '0');
  return shown === '' ? whole : `${whole}.${shown}`;
};

/** How far off a fraction may read, as a share of the length itself: neck relief in 64ths would read as nothing. */
const WORST_FRACTION = 0.03;

const fractionTells = (mm: number, denominator: number): boolean => {
  const parts = (mm / MM_PER_INCH) * denominator;
  return Math.abs(Math.round(parts) - parts) <= WORST_FRACTION * Math.abs(parts);
};

/** A length as a box shows it. Where a fraction of an inch would hide too much of a small one, it comes in decimals. */
export const lengthText = (mm: number, style: LengthStyle): string => {
  if (!('denominator' in style)) return decimal(mm, style.unit, style.unit === 'mm' ? 1 : style.decimals);
  return fractionTells(mm, style.denominator) ? formatLength(mm, style) : decimal(mm, 'in', 3);
};

/** A field's value as its box or the history shows it; empty for no value. */
export const fieldText = (field: Field, value: FieldValue, style: LengthStyle): string => {
  if (value === null) return '';
  switch (field.kind) {
    case 'length':
      return lengthText(Number(value), style);
    case 'number':
      return String(Number((Number(value) * field.scale).toFixed(3)));
    case 'choice':
      return field.choices.find((each) => each.value === value)?.label ?? String(value);
    case 'text':
      return String(value);
  }
};
