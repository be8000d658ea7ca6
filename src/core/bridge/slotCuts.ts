import { lineCrossings } from '../geom/lineCrossings';
import { pathBounds } from '../geom/pathBounds';
import type { BridgePlace, SlotPlace } from './types';

/** The slot measured from the bridge at one place across it, mm along the centreline. */
export interface SlotCut {
  readonly id: 'treble' | 'centre' | 'bass';
  /** From the centreline, + to the treble side. */
  readonly x: number;
  /** From the front edge there back to the front wall and to the back wall of the slot. */
  readonly toFrontWall: number;
  readonly toBackWall: number;
  /** How far the front edge there lies behind where it crosses the centreline; − ahead of it. */
  readonly edgeBehind: number;
}

/** dy/dx of the slot. */
export const slotSlope = ({ ends: { treble, bass } }: SlotPlace): number => (treble.y - bass.y) / (treble.x - bass.x);

/**
 * Front edge to both walls of the slot, treble end, centreline and bass end: what a slot that is cut after gluing, or
 * filled and cut again, is laid out by. The ends are those of the slot's own centreline, which in an open slot are those of
 * the bridge. Where the edge at such an end runs away, as at a rounded tip, the figure is from the edge that is there.
 */
export const slotCuts = (slot: SlotPlace, bridge: BridgePlace): readonly SlotCut[] => {
  const slope = slotSlope(slot);
  const { minX, maxX } = pathBounds(bridge.footprint.outline);
  // On the very tip of the bridge a line along it meets no edge.
  const within = (x: number): number => Math.min(Math.max(x, minX + 0.01), maxX - 0.01);
  const at = (id: SlotCut['id'], end: number): SlotCut => {
    const x = within(end);
    const [edge = 0] = lineCrossings(bridge.footprint.outline, { x, y: bridge.front }, { x: 0, y: 1 });
    const toEdge = (y: number): number => y + slope * x - bridge.front - edge;
    return { id, x, toFrontWall: toEdge(slot.front), toBackWall: toEdge(slot.back), edgeBehind: edge };
  };
  return [at('treble', slot.ends.treble.x), at('centre', 0), at('bass', slot.ends.bass.x)];
};
