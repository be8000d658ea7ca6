import type { Point } from '../geom/types';

/** A change that puts right what a check found: figures for fields, in one step. */
export interface Mend {
  /** For the button: "Two pin rows, {0} apart"; {0}, {1} stand for `lengths`. */
  readonly label: string;
  readonly lengths: readonly number[];
  readonly set: readonly { readonly path: string; readonly value: number | string }[];
}

/** One line of the table of design checks. */
export interface DesignCheck {
  readonly id: string;
  readonly verdict: 'good' | 'look' | 'wrong';
  /** Plain words; {0}, {1} stand for `lengths`, so that the reader's unit can be used. See `checkMessage`. */
  readonly message: string;
  /** mm */
  readonly lengths: readonly number[];
  /** Where the limit comes from; null when the check has none. */
  readonly source: string | null;
  /** The places that it speaks of, instrument frame. */
  readonly at?: readonly Point[];
  /** What marks those places in the drawing, while the check is not good: "check: pins clear the slot". */
  readonly part?: string;
  /** The row of the field table for its limit: "limits.wallAroundPins". */
  readonly limit?: string;
  /**
   * Works out, when asked, what would put it right; null when nothing tried does so without spoiling another check. Checks
   * that come from a worker have none.
   */
  readonly mend?: () => Mend | null;
}
