import { lineCrossings } from '../geom/lineCrossings';
import { pathBounds } from '../geom/pathBounds';
import type { Path, Point } from '../geom/types';

/** Three clamps do not stand side by side on a shorter bridge, mm: our own reasoning, no source. */
const ROOM_FOR_THREE = 90;
/** How far out a wing is pressed, as a share of half the bridge: our own reasoning, no source. */
const WING = 0.66;

export const CLAMPS_SOURCE =
  'three clamps: mimf.com; three or four: argapa.blogspot.com; centre first, then the wings: common practice. Their places: our own reasoning, no source';

/**
 * Where clamps may go and in which order, in the frame of the outline: the centre first, then the wings, each half way from
 * front to back; two on a bridge too short for three.
 */
export const proposedClamps = (outline: Path): readonly Point[] => {
  const { minX, maxX, minY, maxY } = pathBounds(outline);
  const middle = (x: number): Point => {
    const edges = lineCrossings(outline, { x, y: 0 }, { x: 0, y: 1 });
    return { x, y: ((edges[0] ?? minY) + (edges.at(-1) ?? maxY)) / 2 };
  };
  const aside = maxX - minX < ROOM_FOR_THREE ? 0.5 : WING;
  const wings = [middle(minX * aside), middle(maxX * aside)];
  return maxX - minX < ROOM_FOR_THREE ? wings : [middle((minX + maxX) / 2), ...wings];
};
