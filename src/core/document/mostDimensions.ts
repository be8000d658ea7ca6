/** Dimensions that one drawing may have pinned. */
export const MOST_DIMENSIONS = 100;
