import type { Cutting } from '../document/types';
import { pathBounds } from '../geom/pathBounds';
import { fail, ok, type Result } from '../result';
import { slotSlope } from './slotCuts';
import type { BridgePlace, SlotPlace } from './types';

/** Where the fence lies for one pass: its edge, ahead of the line of the front edge, mm along the centreline; − behind it. */
export interface FencePass {
  readonly wall: 'front' | 'back';
  readonly treble: number;
  readonly bass: number;
}

/** The fence settings of a slot, and the places across the bridge that they are measured at. */
export interface FenceSettings {
  /** From the centreline to both ends of the bridge, where the settings are laid off, mm. */
  readonly half: number;
  /** One pass where the cutter is as wide as the slot. */
  readonly passes: readonly FencePass[];
}

/** A cutter this near to the slot's width cuts it in one pass, mm. */
const SAME_MM = 0.005;

/**
 * How a straight fence is clamped ahead of the slot, on the nut side, for a machine whose base runs along it: parallel to
 * the slot, so that the cutter touches first the front wall and then the back wall. The settings are laid off at both ends
 * of the bridge, along the centreline's direction, from the line of the front edge: square to the centreline where the edge
 * crosses it. The middle of the cutter runs half a cutter inside a wall, and the fence `base` ahead of that, square to the
 * slot. Codes: cutting.wide.
 */
export const fenceSettings = (
  { cutter, base }: Cutting,
  width: number,
  slot: SlotPlace,
  bridge: BridgePlace,
): Result<FenceSettings> => {
  if (cutter > width + SAME_MM)
    return fail(
      'bridge.cutting.cutter',
      'cutting.wide',
      'The cutter is wider than the slot. Take a cutter as wide as the slot or narrower.',
    );
  const slope = slotSlope(slot);
  const stretch = Math.hypot(1, slope);
  const { minX, maxX } = pathBounds(bridge.footprint.outline);
  const half = Math.max(maxX, -minX);
  const pass = (wall: FencePass['wall'], middle: number): FencePass => {
    const ahead = bridge.front - middle + base * stretch;
    return { wall, treble: ahead - slope * half, bass: ahead + slope * half };
  };
  const inside = (cutter / 2) * stretch;
  const first = pass('front', slot.front + inside);
  return ok({ half, passes: width - cutter <= SAME_MM ? [first] : [first, pass('back', slot.back - inside)] });
};
