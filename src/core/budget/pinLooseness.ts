/** What pins that are loose let a bridge do, either way from the middle. */
export interface PinLooseness {
  /** mm */
  readonly shift: number;
  /** radians */
  readonly turn: number;
}

/**
 * Two pins with a clearance of diameter c, a distance d apart: each lets its place move by c/2, so all of it moves by c/2,
 * and turns by c/d when they go opposite ways. Elementary geometry. clearance and apart mm; apart above 0.
 */
export const pinLooseness = (clearance: number, apart: number): PinLooseness => {
  if (!(clearance >= 0 && Number.isFinite(clearance) && apart > 0 && Number.isFinite(apart)))
    throw new RangeError('Expected a clearance of 0 or more and pins that stand apart.');
  return { shift: clearance / 2, turn: Math.asin(Math.min(1, clearance / apart)) };
};
