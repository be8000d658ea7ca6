/** One cause of doubt: what it does to the answer by itself (one sigma, with its sign), and how well it is known. */
export interface UncertaintyPart {
  /** Sensitivity times standard uncertainty, in the answer's unit; the sign counts only with `correlation`. */
  readonly effect: number;
  /** Degrees of freedom of its estimate; absent: known. */
  readonly degreesOfFreedom?: number;
}

/** Combined standard uncertainty, and the degrees of freedom that Student's t is taken at for it. */
export interface CombinedUncertainty {
  readonly sigma: number;
  readonly degreesOfFreedom: number;
}

/**
 * Law of propagation of uncertainty, JCGM 100:2008 (GUM) equations 10, 13 and G.2b (Welch and Satterthwaite).
 * correlation: between causes i and j, from −1 to 1; absent: independent.
 * Throws RangeError when a figure is not finite, or the correlations cannot be (the variance comes out below 0).
 */
export const combineUncertainty = (
  parts: readonly UncertaintyPart[],
  correlation: (i: number, j: number) => number = () => 0,
): CombinedUncertainty => {
  let variance = 0;
  let welch = 0;
  for (const [i, { effect, degreesOfFreedom }] of parts.entries()) {
    variance += effect ** 2;
    for (let j = 0; j < i; j += 1) variance += 2 * effect * (parts[j]?.effect ?? 0) * correlation(i, j);
    if (degreesOfFreedom !== undefined) welch += effect ** 4 / degreesOfFreedom;
  }
  if (!Number.isFinite(variance) || variance < 0)
    throw new RangeError(`Expected finite effects and possible correlations, got a variance of ${variance}.`);
  return {
    sigma: Math.sqrt(variance),
    degreesOfFreedom: welch === 0 ? Number.POSITIVE_INFINITY : variance ** 2 / welch,
  };
};
