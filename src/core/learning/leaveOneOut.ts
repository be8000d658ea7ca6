import { type Belief, estimateNext } from './estimateNext';

/** What the others say when one instrument is left out, for one string. mm. */
export interface LeftOut {
  /** Without this one; null when it is the only one. */
  readonly estimate: number | null;
  /** The estimate with it less the one without it. */
  readonly change: number;
  /** It came out farther off than the others let expect in 99 cases of 100; they are three at the least. */
  readonly stray: boolean;
}

const FEWEST_OTHERS = 3;

/** Each instrument left out in turn, in their order. @throws RangeError as estimateNext */
export const leaveOneOut = (errors: readonly number[], belief: Belief): readonly LeftOut[] => {
  const all = estimateNext(errors, belief);
  return errors.map((error, index) => {
    const others = estimateNext(
      errors.filter((_, other) => other !== index),
      belief,
    );
    const without = others?.estimate ?? 0;
    return {
      estimate: others?.estimate ?? null,
      change: (all?.estimate ?? 0) - without,
      stray: others !== null && others.count >= FEWEST_OTHERS && Math.abs(error - without) > others.doubt99,
    };
  });
};
