import type { LengthField, NumberField, TextField } from '../../core/document/fieldTypes';
import type { FieldValue } from '../../core/document/fieldValue';
import { fail, ok, type Result } from '../../core/result';
import { parseLength } from '../../core/units/parseLength';

const readNumber = (field: NumberField, text: string): Result<FieldValue> => {
  const plain = text
    .trim()
    .replace(/\s*[%°]$/, '')
    .replace(',', '.')
    .replace(/^[−–]/, '-');
  if (plain === '' && field.optional === true) return ok(null);
  if (plain === '') return fail(field.path, 'number.unfinished', `Type a number for ${field.label}.`);
  if (!/^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain))
    return fail(field.path, 'number.wrong', `“${text.trim()}” is not a number: expected digits, such as 14.`);
  return ok(Number(plain) / field.scale);
};

/** The value that a maker typed into a field's box. An empty box is a value only where the field allows none. */
export const readField = (
  field: LengthField | NumberField | TextField,
  text: string,
  unit: 'mm' | 'in',
): Result<FieldValue> => {
  switch (field.kind) {
    case 'length':
      return field.optional === true && text.trim() === '' ? ok(null) : parseLength(text, unit);
    case 'number':
      return readNumber(field, text);
    case 'text':
      return ok(text.trim());
  }
};
