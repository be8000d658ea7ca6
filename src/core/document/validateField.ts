import { type Issue, issue } from '../result';
import type { Field } from './fieldTypes';
import type { FieldValue } from './fieldValue';

/** Writes a length for the reader, unit included. */
type ShowLength = (mm: number) => string;

const inMillimetres: ShowLength = (mm) => `${mm} mm`;

/** Every reason why this value cannot stand in this field, by its own row of the table alone; none means it can. */
export const validateField = (field: Field, value: FieldValue, show: ShowLength = inMillimetres): readonly Issue[] => {
  const wrong = (code: string, message: string): readonly Issue[] => [issue(field.path, code, message)];
  switch (field.kind) {
    case 'length':
      if (value === null && field.optional === true) return [];
      if (typeof value !== 'number' || !Number.isFinite(value))
        return wrong('field.kind', `${field.label} is a length.`);
      if (value < field.min || value > field.max)
        return wrong('field.range', `${field.label} goes from ${show(field.min)} to ${show(field.max)}.`);
      return [];
    case 'number':
      if (value === null && field.optional === true) return [];
      if (typeof value !== 'number' || !Number.isFinite(value))
        return wrong('field.kind', `${field.label} is a number.`);
      if (field.whole && !Number.isInteger(value)) return wrong('field.whole', `${field.label} is a whole number.`);
      if (value < field.min || value > field.max)
        return wrong(
          'field.range',
          `${field.label} goes from ${field.min * field.scale} to ${field.max * field.scale}.`,
        );
      return [];
    case 'choice':
      if (!field.choices.some((each) => each.value === value))
        return wrong(
          'field.choice',
          `${field.label} is one of: ${field.choices.map((each) => each.label).join(', ')}.`,
        );
      return [];
    case 'text':
      if (typeof value !== 'string') return wrong('field.kind', `${field.label} is text.`);
      if (value.length > field.maxLength)
        return wrong('field.long', `${field.label} holds ${field.maxLength} characters at most.`);
      return [];
  }
};
