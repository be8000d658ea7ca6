import type { Field } from '../core/document/fieldTypes';
import type { FieldValue } from '../core/document/fieldValue';
import type { LengthStyle } from '../core/units/formatLength';
import { fieldText } from './fieldText';

/** What a changed field is called in the history: "Nut width 44.5", "Hand: left". */
export const stepLabel = (field: Field, value: FieldValue, style: LengthStyle): string => {
  const text = fieldText(field, value, style);
  if (text === '') return `${field.label} cleared`;
  if (field.kind === 'choice') return `${field.label}: ${text.toLowerCase()}`;
  return field.kind === 'text' ? `${field.label}: ${text}` : `${field.label} ${text}`;
};
