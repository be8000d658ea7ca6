import type { SquareLine } from './types';

/** Room between square line and bridge in which a small square stands, mm: common practice, no source. */
const CLEAR_OF_BRIDGE = 15;
/** Round figures that a rule is read at without counting: 10 mm or half an inch. */
const STEP = { mm: 10, in: 12.7 } as const;

/**
 * Where the bold square line stands: the last round figure from the nut datum that leaves 15 mm to the bridge.
 * front: y of the foremost point of the bridge; twelfth: y of the 12th fret; face: how far the nut's front face lies
 * behind the datum, null when the datum is not a zero fret.
 */
export const squareLine = (
  front: number,
  twelfth: number,
  face: number | null,
  unit: keyof typeof STEP,
): SquareLine => {
  const step = STEP[unit];
  const fromNut = Math.floor((front - CLEAR_OF_BRIDGE) / step + 1e-9) * step;
  return { fromNut, fromTwelfth: fromNut - twelfth, fromNutFace: face === null ? null : fromNut + face };
};
