import type { Field } from '../../../core/document/fieldTypes';
import type { FieldValue } from '../../../core/document/fieldValue';
import { readMinutes } from '../../../core/glue/readMinutes';
import { readPressure } from '../../../core/glue/readPressure';
import { fahrenheitOf, readTemperature } from '../../../core/glue/readTemperature';
import { showMinutes } from '../../../core/glue/showMinutes';
import { ok, type Result } from '../../../core/result';
import type { LengthStyle } from '../../../core/units/formatLength';
import { roundDecimal } from '../../../core/units/roundDecimal';
import { fieldText } from '../../../store/fieldText';
import { plainSide } from '../../draw/repair/sideText';
import { readField } from '../../fields/readField';

const unitOf = (field: Field): string => (field.kind === 'number' ? field.unit : '');

/** Labels give open and closed times in minutes; a bare number there is one. */
const inMinutes = (path: string): boolean => path.endsWith('.open') || path.endsWith('.closed');

/** Makers in inches read their air in °F. */
const degrees = ({ unit }: LengthStyle): 'C' | 'F' => (unit === 'in' ? 'F' : 'C');

/** The sign behind a box of the glue card; none where the text carries it. */
export const glueUnit = (field: Field, style: LengthStyle): string => {
  if (field.kind === 'length') return style.unit;
  const unit = unitOf(field);
  if (unit === '°C') return `°${degrees(style)}`;
  return unit === 'min' ? '' : unit;
};

/** A value as its box shows it. */
export const glueText = (field: Field, value: FieldValue, style: LengthStyle): string => {
  if (typeof value !== 'number') return fieldText(field, value, style);
  switch (unitOf(field)) {
    case 'min':
      return showMinutes(value);
    case '°C':
      return String(roundDecimal(degrees(style) === 'F' ? fahrenheitOf(value) : value, 1));
    default:
      return fieldText(field, value, style);
  }
};

/** The value that a maker typed. Codes: those of the readers. */
export const readGlue = (field: Field, text: string, style: LengthStyle): Result<FieldValue> => {
  if (field.kind === 'choice') return ok(text);
  const empty = text.trim() === '' && field.kind === 'number' && field.optional === true;
  if (empty) return ok(null);
  switch (unitOf(field)) {
    case 'min':
      return readMinutes(text, inMinutes(field.path));
    case '°C':
      return readTemperature(text, degrees(style));
    case 'psi':
      return readPressure(text);
    default:
      return readField(field, field.kind === 'length' ? plainSide(text) : text, style.unit);
  }
};
