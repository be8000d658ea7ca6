/** Outside of these a sheet is not the one that was drawn, and no factor mends it. Common practice, no source. */
export const PLAUSIBLE = { least: 0.9, most: 1.1 } as const;
