import type { DesignCheck, Mend } from './types';

/** A check with what is worth trying when it is not good, the best first; not known yet to serve. */
export interface Finding extends Omit<DesignCheck, 'mend'> {
  readonly tries?: readonly Mend[];
}

/** One figure for one field. The label's {0} is that figure. */
export const setOne = (path: string, value: number, label: string): Mend => ({
  label,
  lengths: [value],
  set: [{ path, value }],
});
