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
}
