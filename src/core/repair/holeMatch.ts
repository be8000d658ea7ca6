import type { Hole, SaddlePlace } from '../bridge/types';
import { distance, subtract } from '../geom/points';
import type { Point } from '../geom/types';
import { fitRigid } from '../placement/rigid/fitRigid';
import { placePoint } from '../placement/rigid/placePoint';
import { fail, ok, type Result } from '../result';
import type { HoleMatch, HolePair } from './types';

/** From the treble side to the bass side, as strings are counted; holes of one pair keep their order. */
const byString = (holes: readonly Hole[]): readonly Hole[] =>
  [...holes].sort((one, other) => other.centre.x - one.centre.x);

const spreadOf = (holes: readonly Hole[]): number => {
  const first = holes[0]?.centre;
  const last = holes.at(-1)?.centre;
  return first === undefined || last === undefined ? 0 : distance(first, last);
};

/**
 * The new pin holes (string 1 first) against the old holes, paired from the treble side: what each is off, where the bridge
 * would go for the best match, and what that costs the strings. centsPerMm: at the 12th fret, along the centreline.
 *
 * Codes: repair.holeCount (not as many old holes as pins), rigid.notFinite.
 */
export const holeMatch = (
  pins: readonly Hole[],
  former: readonly Hole[],
  saddle: SaddlePlace,
  centsPerMm: number,
): Result<HoleMatch> => {
  if (pins.length !== former.length)
    return fail(
      'repair.holes',
      'repair.holeCount',
      `${former.length} old holes cannot serve ${pins.length} pins one for one.`,
    );
  const old = byString(former);
  const fit = fitRigid(
    pins.map(({ centre }) => centre),
    old.map(({ centre }) => centre),
  );
  if (!fit.ok) return fit;
  const { pose, residuals } = fit.value;
  const pairs = pins.map((pin, index): HolePair => {
    const hole = old[index] ?? pin;
    return { pin, old: hole, placed: subtract(hole.centre, pin.centre), fitted: residuals[index] ?? { x: 0, y: 0 } };
  });
  const centre: Point = { x: 0, y: saddle.centre };
  const moved = placePoint(pose, centre);
  const slope = Math.tan(Math.atan(saddle.slope) + pose.angle);
  const outer = [saddle.strings[0], saddle.strings.at(-1)].flatMap((string) => (string === undefined ? [] : [string]));
  return ok({
    pairs,
    worstPlaced: Math.max(...pairs.map(({ placed }) => Math.hypot(placed.x, placed.y))),
    spread: { pins: spreadOf(pins), old: spreadOf(old) },
    fit: fit.value,
    shift: subtract(moved, centre),
    costs: outer.map(({ name, x }) => {
      const along = moved.y + slope * (x - moved.x) - (saddle.centre + saddle.slope * x);
      return { name, along, cents: 0 - along * centsPerMm };
    }),
  });
};
