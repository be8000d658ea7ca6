import type { AuditLimits } from '../audit/auditLimits';
import type { BridgePlace, SlotPlace } from '../bridge/types';
import { distanceToPath } from '../geom/distanceToPath';
import { pathContains } from '../geom/pathContains';
import { distance } from '../geom/points';
import type { Path, Point } from '../geom/types';
import type { DesignCheck } from './types';
import { wallCheck } from './wallCheck';

/** Distance from a point to an outline, − when the point lies outside of it. */
const inside = (outline: Path, point: Point): number =>
  (pathContains(outline, point) ? 1 : -1) * distanceToPath(outline, point);

/** Least wood between the pin holes and the slot, and between the pin holes and the edge of the bridge. */
export const pinWalls = (slot: SlotPlace, bridge: BridgePlace, limits: AuditLimits): readonly DesignCheck[] => {
  if (bridge.pins.length === 0) return [];
  const toSlot = Math.min(...bridge.pins.map(({ centre, diameter }) => -inside(slot.outline, centre) - diameter / 2));
  const toEdge = Math.min(
    ...bridge.pins.map(({ centre, diameter }) => inside(bridge.footprint.outline, centre) - diameter / 2),
  );
  const apart = Math.min(
    ...bridge.pins.slice(1).map(({ centre, diameter }, index) => {
      const before = bridge.pins[index];
      return before === undefined ? Number.POSITIVE_INFINITY : distance(centre, before.centre) - diameter;
    }),
  );
  return [
    ...(Number.isFinite(apart)
      ? [wallCheck('pins-apart', 'Pin holes clear one another', apart, limits.wallAroundPins)]
      : []),
    wallCheck('pins-slot', 'Pins clear the slot', toSlot, limits.wallAroundPins),
    wallCheck('pins-edge', 'Pins clear the edge of the bridge', toEdge, limits.wallAroundPins),
  ];
};

/** Least wood between the slot and the edge of the bridge. */
export const slotWall = (slot: SlotPlace, bridge: BridgePlace, limits: AuditLimits): readonly DesignCheck[] => {
  const corners = [slot.outline.start, ...slot.outline.segments.map(({ to }) => to), slot.ends.treble, slot.ends.bass];
  const wall = Math.min(...corners.map((point) => inside(bridge.footprint.outline, point)));
  return [wallCheck('slot-edge', 'The slot clears the edge of the bridge', wall, limits.wallAroundSlot)];
};
