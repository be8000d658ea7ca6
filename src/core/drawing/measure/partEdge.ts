import type { BridgePlace, SlotPlace } from '../../bridge/types';
import { circlePath } from '../../geom/circlePath';
import type { Path } from '../../geom/types';
import type { PartName } from '../types';

/** The closed edge of a part, instrument frame; null for a part that has none or is not there. */
export const partEdge = (part: PartName, bridge: BridgePlace, slot: SlotPlace): Path | null => {
  if (part === 'footprint') return bridge.footprint.outline;
  if (part === 'slot') return slot.outline;
  const hole = [...bridge.pins, ...bridge.locating].find(({ label }) => label === part);
  return hole === undefined ? null : circlePath(hole.centre, hole.diameter / 2);
};

/** Every part that has an edge to measure from. */
export const partsWithEdge = (bridge: BridgePlace): readonly PartName[] => [
  'footprint',
  'slot',
  ...[...bridge.pins, ...bridge.locating].map(({ label }) => label),
];
