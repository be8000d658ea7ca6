/** Paper sizes in portrait. Source: ISO 216:2007 (from a secondary source), mm. */
export const ISO_216_MM = {
  a4: [210, 297],
  a3: [297, 420],
} as const;

/** US sizes in points, 72 to the inch: 8.5 × 11, 8.5 × 14, 11 × 17 in, ASME Y14.1 and trade custom, from memory. */
export const US_POINTS = {
  letter: [612, 792],
  legal: [612, 1008],
  tabloid: [792, 1224],
} as const;
