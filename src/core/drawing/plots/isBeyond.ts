import { roundDecimal } from '../../units/roundDecimal';

/** Whether an error is beyond the limit as it is written, to a tenth of a cent: "2.0" is not more than 2. */
export const isBeyond = (cents: number, limit: number): boolean => roundDecimal(Math.abs(cents), 1) > limit;
