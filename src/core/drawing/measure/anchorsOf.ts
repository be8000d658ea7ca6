import type { BridgePlace, SlotPlace } from '../../bridge/types';
import type { Anchor } from '../../document/dimensionTypes';
import { closedSegments } from '../../geom/closedSegments';
import type { Point } from '../../geom/types';
import { nodePart } from '../nodes/nodePart';
import type { PartName } from '../types';
import { featuresOf } from './anchorPlace';

/** A place that can be measured from, and where it lies, instrument frame. */
export interface PlacedAnchor {
  readonly anchor: Extract<Anchor, { readonly kind: 'part' }>;
  readonly at: Point;
}

/** Every place of the bridge that can be measured from: slot, holes, named places of the outline, and its nodes when it is drawn freely. */
export const anchorsOf = (bridge: BridgePlace, slot: SlotPlace, drawn: boolean): readonly PlacedAnchor[] => {
  const holes = [...bridge.pins, ...bridge.locating].map(({ label }) => label);
  const nodes = drawn ? closedSegments(bridge.footprint.outline) : [];
  const parts: readonly PartName[] = ['slot', 'footprint', ...holes];
  return [
    ...parts.flatMap((part) =>
      Object.entries(featuresOf(part, bridge, slot)).map(
        ([feature, at]): PlacedAnchor => ({ anchor: { kind: 'part', part, feature }, at }),
      ),
    ),
    ...nodes.map(
      ({ start }, index): PlacedAnchor => ({
        anchor: { kind: 'part', part: nodePart(index), feature: 'itself' },
        at: start,
      }),
    ),
  ];
};
