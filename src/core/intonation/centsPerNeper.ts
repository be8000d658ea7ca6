/** Cents in a frequency ratio of e: 1200/ln 2 = 1731.234. */
export const CENTS_PER_NEPER = 1200 / Math.LN2;
