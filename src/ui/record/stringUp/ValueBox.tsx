import type { LengthField, NumberField, TextField } from '../../../core/document/fieldTypes';
import type { FieldValue } from '../../../core/document/fieldValue';
import { validateField } from '../../../core/document/validateField';
import type { Issue } from '../../../core/result';
import { showLength } from '../../../core/units/showLength';
import { fieldText } from '../../../store/fieldText';
import { readField } from '../../fields/readField';
import { TextBox } from '../../fields/TextBox';
import { useLengths } from '../../useLengths';

interface ValueBoxProps {
  readonly field: LengthField | NumberField | TextField;
  readonly value: number | string | null;
  readonly note?: string | undefined;
  readonly usual?: string | undefined;
  /** Takes the value; answers with what is wrong. */
  readonly take: (value: FieldValue) => readonly Issue[];
}

/** A box for one figure, or a few words, of a list that the field table does not know. */
export function ValueBox({ field, value, note, usual, take }: ValueBoxProps) {
  const { style } = useLengths();
  const shown = fieldText(field, value, style);
  const read = (text: string): string | null => {
    if (text === shown) return null;
    const result = readField(field, text, style.unit);
    if (!result.ok) return result.issues[0]?.message ?? null;
    const wrong = validateField(field, result.value, (mm) => showLength(mm, style));
    const issues = wrong.length > 0 ? wrong : take(result.value);
    return issues[0]?.message ?? null;
  };
  const unit = field.kind === 'length' ? style.unit : field.kind === 'number' ? field.unit : '';
  return (
    <TextBox
      label={field.label}
      path={field.path}
      shown={shown}
      unit={unit}
      about={field.source === undefined ? field.help : `${field.help} Source: ${field.source}.`}
      decimal={field.kind !== 'text'}
      usual={usual}
      note={note}
      take={read}
    />
  );
}
