import type { Field } from '../../core/document/fieldTypes';
import { type FieldValue, fieldValue } from '../../core/document/fieldValue';
import { fieldText } from '../../store/fieldText';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { useFieldAt } from './FieldLookup';
import { readField } from './readField';
import { SelectRow } from './SelectRow';
import { TextBox } from './TextBox';

interface FieldRowProps {
  readonly path: string;
  /** Shown in place of the saved value, when that is not what counts. */
  readonly instead?: number | undefined;
  readonly note?: string | undefined;
  /** What counts while the box is empty. */
  readonly usual?: string | undefined;
  /** Other ways to write the value, brought into the plain one. */
  readonly plain?: (text: string) => string;
}

/** What is read out with a field. */
const aboutField = ({ help, source }: Field): string => (source === undefined ? help : `${help} Source: ${source}.`);

/** One field of the project: its row of the field table as a box or a select. Nothing where the project has no such field. */
export function FieldRow({ path, instead, note, usual, plain }: FieldRowProps) {
  const { actions } = useServices().store;
  const project = useStore((state) => state.project);
  const { style } = useLengths();
  const field = useFieldAt()(project, path);
  if (field === null) return null;
  const value: FieldValue = instead ?? fieldValue(project, path);

  if (field.kind === 'choice')
    return (
      <SelectRow
        label={field.label}
        path={path}
        about={aboutField(field)}
        value={String(value)}
        choices={field.choices}
        choose={(chosen) => actions.setField(field, chosen)}
      />
    );

  const shown = fieldText(field, value, style);
  const take = (text: string): string | null => {
    // The text as it stood stands for the exact value, which the box may show rounded.
    const read = text === shown ? { ok: true as const, value } : readField(field, plain?.(text) ?? text, style.unit);
    const issues = read.ok ? actions.setField(field, read.value) : read.issues;
    return issues[0]?.message ?? null;
  };
  const unit = field.kind === 'length' ? style.unit : field.kind === 'number' ? (field.unit.split(' ')[0] ?? '') : '';
  return (
    <TextBox
      label={field.label}
      path={path}
      shown={shown}
      unit={unit}
      about={aboutField(field)}
      decimal={field.kind !== 'text'}
      usual={usual}
      note={note}
      take={take}
    />
  );
}
