import type { FieldValue } from '../../../core/document/fieldValue';
import type { Difference } from '../../../core/library/difference';
import type { LengthStyle } from '../../../core/units/formatLength';
import { fieldText } from '../../../store/fieldText';

/** A value of a difference as words: with its unit, and a dash for none. */
export const differenceText = ({ field }: Difference, value: FieldValue, style: LengthStyle): string => {
  if (value === null || value === '') return '–';
  if (field === null) return String(value);
  const text = fieldText(field, value, style);
  if (field.kind === 'length') return `${text} ${style.unit}`;
  return field.kind === 'number' && field.unit !== '' ? `${text} ${field.unit}` : text;
};
