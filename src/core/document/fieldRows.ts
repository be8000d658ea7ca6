import type { ChoiceField, LengthField, NumberField, TextField } from './fieldTypes';

/** A length, mm. */
export const lengthField = (
  path: string,
  label: string,
  min: number,
  max: number,
  help: string,
  source?: string,
): LengthField =>
  source === undefined
    ? { kind: 'length', path, label, min, max, help }
    : { kind: 'length', path, label, min, max, help, source };

/** The same field, which may also stand empty. */
export const orEmpty = <Row extends LengthField | NumberField>(row: Row): Row => ({ ...row, optional: true });

/** A plain number in its own unit; whole numbers and shares shown as per cent are made by spreading over it. */
export const numberField = (
  path: string,
  label: string,
  unit: string,
  min: number,
  max: number,
  help: string,
  source?: string,
): NumberField => ({
  kind: 'number',
  path,
  label,
  unit,
  min,
  max,
  whole: false,
  scale: 1,
  help,
  ...(source === undefined ? {} : { source }),
});

/** One of a few values, each with its words. */
export const choiceField = (
  path: string,
  label: string,
  help: string,
  choices: readonly (readonly [string, string])[],
): ChoiceField => ({
  kind: 'choice',
  path,
  label,
  help,
  choices: choices.map(([value, name]) => ({ value, label: name })),
});

/** Words. */
export const textField = (path: string, label: string, maxLength: number, help: string): TextField => ({
  kind: 'text',
  path,
  label,
  maxLength,
  help,
});
