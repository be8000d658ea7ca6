import type { Hole } from '../bridge/types';
import type { FormerFootprint, FormerHoles, FormerRow } from '../document/repairTypes';
import type { Point } from '../geom/types';
import { placePoint } from '../placement/rigid/placePoint';
import { formerPose } from './formerPose';

/** The holes of a row in the frame that it is read from, string 1 first. */
const rowPoints = ({ count, spread, distance, aside, slant, stagger }: FormerRow): readonly Point[] =>
  Array.from({ length: count }, (_, index) => {
    const along = count === 1 ? 0 : spread / 2 - (index * spread) / (count - 1);
    const back = (index % 2) * stagger;
    return { x: aside + along * Math.cos(slant), y: distance - along * Math.sin(slant) + back };
  });

/** Every old hole, in the maker's order, instrument frame. */
export const formerHoles = (holes: FormerHoles, footprint: FormerFootprint): readonly Hole[] => {
  const pose = formerPose(holes.from, footprint);
  const local =
    holes.kind === 'row'
      ? rowPoints(holes).map((at) => ({ ...at, diameter: holes.diameter }))
      : holes.each.map(({ x, y, diameter }) => ({ x, y, diameter }));
  return local.map(({ diameter, ...at }, index) => ({
    id: `old-hole-${index + 1}`,
    label: `old hole ${index + 1}`,
    centre: placePoint(pose, at),
    diameter,
  }));
};
