/** How many places each kind of measuring is taken between. */
export const PICKS_WANTED = { distance: 2, angle: 3, gap: 2 } as const;
