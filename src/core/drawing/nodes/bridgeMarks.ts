import type { BridgePlace, SlotPlace } from '../../bridge/types';
import { pathBounds } from '../../geom/pathBounds';
import { add } from '../../geom/points';
import type { Point } from '../../geom/types';
import type { StringPlace } from '../../instrument/types';

/** What a maker lines other things up with, footprint frame: y 0 is the front edge on the centreline. */
export interface BridgeMarks {
  readonly slotEnds: { readonly treble: Point; readonly bass: Point };
  /** Walls of the slot and back edge of the bridge, on or about the centreline. */
  readonly slotFront: number;
  readonly slotBack: number;
  readonly back: number;
  /** The outer strings over the saddle; null when they could not be placed. */
  readonly strings: { readonly treble: number; readonly bass: number } | null;
}

/** The marks of a bridge in place. */
export const bridgeMarks = (
  bridge: BridgePlace,
  slot: SlotPlace,
  strings: readonly StringPlace[] | null,
): BridgeMarks => {
  const home = (point: Point): Point => add(point, { x: 0, y: -bridge.front });
  const across = strings?.map(({ saddleX }) => saddleX) ?? [];
  return {
    slotEnds: { treble: home(slot.ends.treble), bass: home(slot.ends.bass) },
    slotFront: slot.front - bridge.front,
    slotBack: slot.back - bridge.front,
    back: pathBounds(bridge.footprint.outline).maxY - bridge.front,
    strings: across.length === 0 ? null : { treble: Math.max(...across), bass: Math.min(...across) },
  };
};
