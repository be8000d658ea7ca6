import type { Field } from '../document/fieldTypes';
import type { FieldValue } from '../document/fieldValue';

/** One thing in which two projects differ. */
export interface Difference {
  readonly path: string;
  /** What of the project it belongs to, in words. */
  readonly part: string;
  readonly label: string;
  /** Its row of the field table; null for what has none: both values are words then. */
  readonly field: Field | null;
  readonly one: FieldValue;
  readonly other: FieldValue;
}
