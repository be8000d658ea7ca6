import type { Hole } from '../bridge/types';
import type { Pins } from '../document/types';
import { distanceToPath } from '../geom/distanceToPath';
import { pathContains } from '../geom/pathContains';
import { distance } from '../geom/points';
import type { Path, Point } from '../geom/types';
import type { Wall } from './wallCheck';

/** How wide a pin hole ends up, mm: as it is reamed for the pin, where that is wider than the drill. */
export const mouthOf = (pins: Pins): number => Math.max(pins.hole, pins.underHead);

/** The pin holes as they are reamed. */
export const reamed = (pins: Pins, holes: readonly Hole[]): readonly Hole[] => {
  const diameter = mouthOf(pins);
  return holes.map((hole) => ({ ...hole, diameter }));
};

/** Distance from a point to an outline, − when the point lies outside of it. */
const inside = (outline: Path, point: Point): number =>
  (pathContains(outline, point) ? 1 : -1) * distanceToPath(outline, point);

/** Wood between a hole and the edge of the bridge. */
export const wallToEdge = (outline: Path, { centre, diameter }: Hole): Wall => ({
  wall: inside(outline, centre) - diameter / 2,
  at: [centre],
});

/** Wood between two holes. */
export const wallBetween = (one: Hole, other: Hole): Wall => ({
  wall: distance(one.centre, other.centre) - (one.diameter + other.diameter) / 2,
  at: [one.centre, other.centre],
});

/** Wood between every two holes. */
export const wallsAmong = (holes: readonly Hole[]): readonly Wall[] =>
  holes.flatMap((one, index) => holes.slice(index + 1).map((other) => wallBetween(one, other)));
