import type { BridgePlace, SlotPlace } from '../bridge/types';
import { distanceToPath } from '../geom/distanceToPath';
import { pathContains } from '../geom/pathContains';
import type { Path, Point } from '../geom/types';
import type { DesignCheck } from './types';
import { wallCheck } from './wallCheck';

/** Wood around a pin hole and a slot: common practice, no source. */
const AROUND_HOLE = { wall: 3, source: 'common practice, no source' };
const AROUND_SLOT = { wall: 2, source: 'common practice, no source' };

/** Distance from a point to an outline, − when the point lies outside of it. */
const inside = (outline: Path, point: Point): number =>
  (pathContains(outline, point) ? 1 : -1) * distanceToPath(outline, point);

/** Least wood between the pin holes and the slot, and between the pin holes and the edge of the bridge. */
export const pinWalls = (slot: SlotPlace, bridge: BridgePlace): readonly DesignCheck[] => {
  if (bridge.pins.length === 0) return [];
  const toSlot = Math.min(...bridge.pins.map(({ centre, diameter }) => -inside(slot.outline, centre) - diameter / 2));
  const toEdge = Math.min(
    ...bridge.pins.map(({ centre, diameter }) => inside(bridge.footprint.outline, centre) - diameter / 2),
  );
  return [
    wallCheck('pins-slot', 'Pins clear the slot', toSlot, AROUND_HOLE),
    wallCheck('pins-edge', 'Pins clear the edge of the bridge', toEdge, AROUND_HOLE),
  ];
};

/** Least wood between the slot and the edge of the bridge. */
export const slotWall = (slot: SlotPlace, bridge: BridgePlace): readonly DesignCheck[] => {
  const corners = [slot.outline.start, ...slot.outline.segments.map(({ to }) => to), slot.ends.treble, slot.ends.bass];
  const wall = Math.min(...corners.map((point) => inside(bridge.footprint.outline, point)));
  return [wallCheck('slot-edge', 'The slot clears the edge of the bridge', wall, AROUND_SLOT)];
};
