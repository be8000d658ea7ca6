/** How samples spread. */
export interface Spread {
  readonly mean: number;
  readonly sigma: number;
  /** The middle 95 % of the samples lies between these. */
  readonly low: number;
  readonly high: number;
}

/**
 * Mean, standard deviation and the symmetric 95 % interval of samples sorted smallest first, after JCGM 101:2008, 7.6 and
 * 7.7. Throws RangeError without samples.
 */
export const spreadOf = (sorted: Float64Array): Spread => {
  const count = sorted.length;
  if (count === 0) throw new RangeError('Expected at least one sample.');
  const mean = sorted.reduce((sum, value) => sum + value, 0) / count;
  const squares = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const at = (share: number): number => sorted[Math.min(count - 1, Math.floor(share * count))] as number;
  return { mean, sigma: Math.sqrt(squares / Math.max(1, count - 1)), low: at(0.025), high: at(0.975) };
};
