import { seededRandom } from '../../../src/core/numeric/seededRandom';

/** Chance that is the same for the same seed. */
export interface Dice {
  /** Even over [0, 1). */
  readonly share: () => number;
  /** Even over −reach to reach. */
  readonly within: (reach: number) => number;
  /** A whole number from 0, below this one. */
  readonly below: (count: number) => number;
  /** One of a list; undefined for none. */
  readonly of: <Each>(list: readonly Each[]) => Each | undefined;
}

export const dice = (seed: number): Dice => {
  const { uniform } = seededRandom(seed);
  const below = (count: number): number => Math.floor(uniform() * count);
  return {
    share: uniform,
    within: (reach) => (2 * uniform() - 1) * reach,
    below,
    of: (list) => list[below(list.length)],
  };
};
