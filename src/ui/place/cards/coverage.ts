/** Standard deviations that a ± on these cards spans: JCGM 100:2008 6.3.3, about 95 of 100 for a sum of many causes. */
export const COVERAGE = 2;

/** An angle as the cards write it. */
export const degrees = (radians: number): string => `${((radians * 180) / Math.PI).toFixed(2)}°`;
