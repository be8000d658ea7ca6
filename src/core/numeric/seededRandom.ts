import { xoshiro128 } from './xoshiro128';

/** Numbers that look random and are the same for the same seed. Each call gives the next one. */
export interface SeededRandom {
  /** Even over [0, 1), in steps of 2⁻⁵³. */
  readonly uniform: () => number;
  /** Normal deviates: mean 0, standard deviation 1. */
  readonly normal: () => number;
}

/**
 * A source of repeatable random numbers for sampling, from a whole number within 0 to 2³² − 1 as seed.
 *
 * @throws RangeError when the seed is not such a number
 */
export function seededRandom(seed: number): SeededRandom {
  if (seed >>> 0 !== seed) throw new RangeError(`Expected a whole number within 0 to 2³² − 1 as seed, got ${seed}.`);
  const word = spread(seed);
  const next = xoshiro128([word(), word(), word(), word()]);
  const uniform = () => ((next() >>> 5) * 2 ** 26 + (next() >>> 6)) / 2 ** 53;
  let kept: number | null = null;
  const normal = (): number => {
    if (kept !== null) {
      const value = kept;
      kept = null;
      return value;
    }
    // Polar method: Marsaglia and Bray, SIAM Review 6 (1964) 260.
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square > 0 && square < 1) {
        const factor = Math.sqrt((-2 * Math.log(square)) / square);
        kept = y * factor;
        return x * factor;
      }
    }
  };
  return { uniform, normal };
}

/** Well-mixed words from a seed of little entropy: the finaliser of MurmurHash3 (public domain) over a Weyl sequence. */
function spread(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let word = state;
    word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    return (word ^ (word >>> 16)) >>> 0;
  };
}
