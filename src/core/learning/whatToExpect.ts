import { estimateNext, type NextEstimate } from './estimateNext';
import { leaveOneOut } from './leaveOneOut';
import type { Outcome } from './outcomeOf';

/** One string of the next instrument. */
export interface ExpectedString {
  readonly id: string;
  readonly name: string;
  /** What the model says, mm behind the octave line. */
  readonly model: number;
  /** Null when no instrument that counts was read on this string. */
  readonly next: NextEstimate | null;
}

/** One instrument left out. */
export interface WithoutOne {
  readonly outcome: Outcome;
  /** The estimate without it, by string; null where nothing else was read. */
  readonly estimates: readonly (number | null)[];
  /** The largest change that it makes to a string's estimate, mm, and which string that is, from 0. */
  readonly most: { readonly string: number; readonly change: number };
  /** Strings, from 0, on which it came out farther off than the others let expect. */
  readonly stray: readonly number[];
}

export interface Expectation {
  readonly strings: readonly ExpectedString[];
  readonly without: readonly WithoutOne[];
}

/** The model of one string of the next instrument: what it says, and its one sigma, mm. */
export interface ModelOfNext {
  readonly id: string;
  readonly name: string;
  readonly saddle: number;
  readonly sigma: number;
}

/** A model that doubts nothing would never learn: what it may be off at the least, mm. */
const LEAST_MODEL_DOUBT = 0.05;

/**
 * What to expect of the next instrument from those that count, string by string.
 * @param spread between instruments as held before they were read, one sigma, mm, above 0
 */
export const whatToExpect = (
  models: readonly ModelOfNext[],
  counted: readonly Outcome[],
  spread: number,
): Expectation => {
  const byString = models.map(({ sigma }, index) => {
    const belief = { model: Math.max(sigma, LEAST_MODEL_DOUBT), spread };
    const read = counted.flatMap((outcome) => {
      const error = outcome.strings[index]?.error ?? null;
      return error === null ? [] : [{ id: outcome.id, error }];
    });
    const errors = read.map(({ error }) => error);
    const left = leaveOneOut(errors, belief);
    return {
      next: estimateNext(errors, belief),
      left: new Map(read.map(({ id }, place) => [id, left[place]])),
    };
  });
  return {
    strings: models.map(({ id, name, saddle }, index) => ({
      id,
      name,
      model: saddle,
      next: byString[index]?.next ?? null,
    })),
    without: counted.map((outcome): WithoutOne => {
      const each = byString.map(({ left }) => left.get(outcome.id) ?? null);
      return {
        outcome,
        estimates: each.map((left, index) =>
          left === null ? (byString[index]?.next?.estimate ?? null) : left.estimate,
        ),
        most: each.reduce(
          (most, left, string) =>
            left !== null && Math.abs(left.change) > Math.abs(most.change) ? { string, change: left.change } : most,
          { string: 0, change: 0 },
        ),
        stray: each.flatMap((left, string) => (left?.stray === true ? [string] : [])),
      };
    }),
  };
};
