import { DRILLS } from './drills';
import type { Drill, DrillFamily } from './types';

/** A drill beside the diameter asked for. */
export interface NearDrill extends Drill {
  /** mm, drill less diameter: + when the drill is larger. */
  readonly difference: number;
}

const FAMILIES: readonly DrillFamily[] = ['fractional', 'number', 'letter', 'metric'];

/** Closer than this, mm, two drills count as equally near: far below what a drill is ground to. */
const TIE = 1e-9;

const nearerFirst = (a: NearDrill, b: NearDrill): number => {
  const farther = Math.abs(a.difference) - Math.abs(b.difference);
  return Math.abs(farther) < TIE ? a.diameter - b.diameter : farther;
};

/**
 * The drills nearest to a diameter, family by family: fractional, number, letter, metric; in each the nearest first, and
 * of two equally near the smaller, since a hole can be opened but not closed.
 *
 * @param diameter mm, above 0
 * @param count how many of each family
 * @throws RangeError when `diameter` is not a length above 0 or `count` not a whole number from 1
 */
export const nearestDrills = (diameter: number, count = 1): readonly NearDrill[] => {
  if (!Number.isFinite(diameter) || diameter <= 0) throw new RangeError(`Expected a diameter in mm, got ${diameter}.`);
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`Expected a count from 1, got ${count}.`);
  const measured = DRILLS.map((drill): NearDrill => ({ ...drill, difference: drill.diameter - diameter }));
  return FAMILIES.flatMap((family) =>
    measured
      .filter((drill) => drill.family === family)
      .sort(nearerFirst)
      .slice(0, count),
  );
};
