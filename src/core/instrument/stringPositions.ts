import type { GapRule } from '../document/types';
import { fail, ok, type Result } from '../result';

export interface StringPositionsArguments {
  /** Fingerboard or nut width at that line, mm. */
  readonly width: number;
  /** Board edge to the OUTSIDE of string 1 and of string n, mm. */
  readonly marginTreble: number;
  readonly marginBass: number;
  /** Outside diameters from string 1 (treble) to string n (bass), mm. */
  readonly diameters: readonly number[];
  readonly rule: GapRule;
}

/**
 * String centres across a line, x in mm, from string 1 (treble, +) to string n. `equal-gaps` leaves the same air between
 * neighbours: gap = (outside span − sum of all diameters) / (n − 1), theguitarmechanic.com, nut spacing.
 * Codes: strings.few, strings.diameter, strings.width, strings.tight.
 */
export const stringPositions = (args: StringPositionsArguments): Result<readonly number[]> => {
  const { width, marginTreble, marginBass, diameters, rule } = args;
  const first = diameters[0];
  const last = diameters.at(-1);
  if (first === undefined || last === undefined || diameters.length < 2)
    return fail('diameters', 'strings.few', 'Spacing needs at least two strings.');
  if (!diameters.every((each) => Number.isFinite(each) && each > 0))
    return fail('diameters', 'strings.diameter', 'Every string has a diameter above 0.');
  if (![width, marginTreble, marginBass].every(Number.isFinite))
    return fail('width', 'strings.width', 'The width and both margins are finite lengths.');
  const gaps = diameters.length - 1;
  const treble = width / 2 - marginTreble - first / 2;
  const bass = -width / 2 + marginBass + last / 2;
  const air = treble + first / 2 - (bass - last / 2) - diameters.reduce((sum, each) => sum + each, 0);
  if (treble <= bass || (rule === 'equal-gaps' && air <= 0))
    return fail(
      'width',
      'strings.tight',
      'The strings do not fit: the margins leave no room between the outer strings.',
    );
  if (rule === 'equal-centres') return ok(diameters.map((_, index) => treble - (index * (treble - bass)) / gaps));
  const positions: number[] = [];
  let outside = treble + first / 2;
  for (const diameter of diameters) {
    positions.push(outside - diameter / 2);
    outside -= diameter + air / gaps;
  }
  return ok(positions);
};
