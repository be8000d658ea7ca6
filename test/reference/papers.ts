/** Paper sizes in portrait. Source: ISO 216:2007 (from a secondary source), mm. */
export const ISO_216_MM = {
  a4: [210, 297],
  a3: [297, 420],
  a2: [420, 594],
  a1: [594, 841],
  a0: [841, 1189],
} as const;

/**
 * US sizes in points, 72 to the inch: 8.5 × 11, 8.5 × 14, 11 × 17, 17 × 22, 22 × 34, 34 × 44 in, ASME Y14.1 and trade
 * custom, from memory.
 */
export const US_POINTS = {
  letter: [612, 792],
  legal: [612, 1008],
  tabloid: [792, 1224],
  'ansi-c': [1224, 1584],
  'ansi-d': [1584, 2448],
  'ansi-e': [2448, 3168],
} as const;
