import type { Ties } from '../document/types';
import { lineCrossings } from '../geom/lineCrossings';
import type { Point } from '../geom/types';
import type { BridgePlace, SlotPlace } from './types';

/** A string hole along the instrument, from where the string goes in to the back edge of the bridge; both ends of its middle. */
export interface TieHole {
  readonly id: string;
  readonly label: string;
  readonly mouth: Point;
  readonly back: Point;
  readonly diameter: number;
}

/**
 * The string holes of a tie block, or of a bridge that holds its strings at the back edge: string 1 first, evenly spaced
 * about the centreline, their mouths square to it. Instrument frame. A hole that misses the bridge has no length.
 */
export const tieHoles = (ties: Ties, count: number, slot: SlotPlace, bridge: BridgePlace): readonly TieHole[] =>
  Array.from({ length: count }, (_, index) => {
    const x = count === 1 ? 0 : ties.spread / 2 - (index * ties.spread) / (count - 1);
    const mouth: Point = { x, y: slot.back + ties.from };
    const edge = lineCrossings(bridge.footprint.outline, mouth, { x: 0, y: 1 }).at(-1) ?? 0;
    return {
      id: `tie-${index + 1}`,
      label: `string hole ${index + 1}`,
      mouth,
      back: { x, y: mouth.y + Math.max(0, edge) },
      diameter: ties.hole,
    };
  });
