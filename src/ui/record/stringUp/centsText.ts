import { withSign } from '../../withSign';

/** Cents as a box shows them: with their sign, as finely as they were typed, to a hundredth at most. */
export const centsText = (cents: number | undefined): string =>
  cents === undefined ? '' : withSign(cents, String(Math.abs(Number(cents.toFixed(2)))));
