/** How many strings an instrument may have. */
export const FEWEST_STRINGS = 3;
export const MOST_STRINGS = 12;
