import type { BridgePlace, SlotPlace } from '../../bridge/types';
import type { Anchor } from '../../document/dimensionTypes';
import { closedSegments } from '../../geom/closedSegments';
import { add } from '../../geom/points';
import type { Point } from '../../geom/types';
import { nodeOfPart } from '../nodes/nodePart';
import type { PartName } from '../types';

/** The features of a slot, each a place on its own centreline or walls. */
const ofSlot = (slot: SlotPlace): Readonly<Record<string, Point>> => ({
  middle: { x: 0, y: slot.middle },
  'treble end': slot.ends.treble,
  'bass end': slot.ends.bass,
  'front wall': { x: 0, y: slot.front },
  'back wall': { x: 0, y: slot.back },
});

/** What can be measured to on a part, by name, the most usual first; nothing for a part that is not there. */
export const featuresOf = (part: PartName, bridge: BridgePlace, slot: SlotPlace): Readonly<Record<string, Point>> => {
  const node = nodeOfPart(part);
  if (node !== null) {
    const at = closedSegments(bridge.footprint.outline)[node]?.start;
    return at === undefined ? {} : { itself: at };
  }
  if (part === 'slot') return ofSlot(slot);
  if (part === 'footprint')
    return {
      'front edge': { x: 0, y: bridge.front },
      ...Object.fromEntries(bridge.footprint.points.map(({ label, at }) => [label, at])),
    };
  const hole = [...bridge.pins, ...bridge.locating].find(({ label }) => label === part);
  return hole === undefined ? {} : { centre: hole.centre };
};

/** Where an anchor lies now, instrument frame; null when its part is no longer there. */
export const anchorPlace = (anchor: Anchor, bridge: BridgePlace, slot: SlotPlace): Point | null => {
  if (anchor.kind === 'point') return add(anchor.at, { x: 0, y: bridge.front });
  const features = featuresOf(anchor.part, bridge, slot);
  return Object.hasOwn(features, anchor.feature) ? (features[anchor.feature] ?? null) : null;
};

/** An anchor in words: "centre of pin 3", "node 5", "treble end of the slot". */
export const anchorWords = (anchor: Anchor): string => {
  if (anchor.kind === 'point') return 'a point';
  const { part, feature } = anchor;
  if (feature === 'itself') return part;
  if (part === 'footprint') return feature;
  return `${feature} of ${part === 'slot' ? 'the slot' : part}`;
};
