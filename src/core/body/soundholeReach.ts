import type { BridgePlace, SlotPlace } from '../bridge/types';
import { distanceToPath } from '../geom/distanceToPath';
import { lineCrossings } from '../geom/lineCrossings';
import { pathBounds } from '../geom/pathBounds';
import { pathContains } from '../geom/pathContains';
import type { Path, Point } from '../geom/types';
import type { Reach } from './types';

/** How far a clamp must reach from the edge of the soundhole to the front, slot, pins, back and wing tips of the bridge. */
export const soundholeReach = (soundhole: Path, bridge: BridgePlace, slot: SlotPlace): readonly Reach[] => {
  const { outline } = bridge.footprint;
  const { minX, maxX } = pathBounds(outline);
  const back = lineCrossings(outline, { x: 0, y: 0 }, { x: 0, y: 1 }).at(-1) ?? bridge.front;
  const tip = (x: number): Point => {
    const edges = lineCrossings(outline, { x: x * 0.98, y: 0 }, { x: 0, y: 1 });
    return { x, y: ((edges[0] ?? bridge.front) + (edges.at(-1) ?? back)) / 2 };
  };
  const reach = (id: string, label: string, at: Point): Reach => ({
    id,
    label,
    at,
    distance: pathContains(soundhole, at) ? 0 : distanceToPath(soundhole, at),
  });
  return [
    reach('front', 'Front edge', { x: 0, y: bridge.front }),
    reach('slot', 'Slot', { x: 0, y: slot.middle }),
    ...(bridge.pinRow === null ? [] : [reach('pins', 'Pin row', { x: 0, y: bridge.pinRow })]),
    reach('back', 'Back edge', { x: 0, y: back }),
    reach('treble', 'Treble tip', tip(maxX)),
    reach('bass', 'Bass tip', tip(minX)),
  ];
};
