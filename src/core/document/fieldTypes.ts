/** One row of the field table: what a value is, what it may be, and what to tell the maker about it. */
interface FieldBase {
  /** Where the value lives in a project: "instrument.widths.nut". */
  readonly path: string;
  /** The name beside the box, and its accessible name. */
  readonly label: string;
  /** One plain sentence: what to measure, from where to where. */
  readonly help: string;
  /** Where the default or the rule comes from; absent when the value is the maker's own reading. */
  readonly source?: string;
}

/** A length in mm between min and max, both allowed. optional: an empty box is a value too (null). */
export interface LengthField extends FieldBase {
  readonly kind: 'length';
  readonly min: number;
  readonly max: number;
  readonly optional?: boolean;
}

/** A plain number with no unit. whole: no decimals. scale: shown = saved × scale (a share shown in per cent has 100). */
export interface NumberField extends FieldBase {
  readonly kind: 'number';
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  readonly scale: number;
  readonly unit: string;
  /** An empty box is a value too (null). */
  readonly optional?: boolean;
}

/** One of a few values. */
export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly choices: readonly { readonly value: string; readonly label: string }[];
}

/** Words. */
export interface TextField extends FieldBase {
  readonly kind: 'text';
  readonly maxLength: number;
}

export type Field = LengthField | NumberField | ChoiceField | TextField;
