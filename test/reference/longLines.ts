/**
 * Ends of both long lines on pages of these sizes, mm, worked by hand from the rules of the sheet: margins of 10, a strip of
 * 10 more at the left and of 20 more at the foot. The line across runs from x = 20, 10.4 below what is left, the one along
 * from y = 10 at x = 14.6, both over as many whole 20 mm as there is room for.
 */
export const LONG_LINES: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  '210.0 × 297.0': [
    [20, 277.4],
    [200, 277.4],
    [14.6, 10],
    [14.6, 250],
  ],
  '297.0 × 210.0': [
    [20, 190.4],
    [280, 190.4],
    [14.6, 10],
    [14.6, 170],
  ],
  '215.9 × 279.4': [
    [20, 259.8],
    [200, 259.8],
    [14.6, 10],
    [14.6, 230],
  ],
  '279.4 × 215.9': [
    [20, 196.3],
    [260, 196.3],
    [14.6, 10],
    [14.6, 170],
  ],
};
