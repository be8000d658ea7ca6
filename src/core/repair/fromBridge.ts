import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { FormerEach, FormerFootprint, FormerRow, FormerSlot } from '../document/repairTypes';
import type { Bridge } from '../document/types';

/** An old footprint that is this bridge where it stands. */
export const footprintFrom = (bridge: Bridge, place: BridgePlace): FormerFootprint => ({
  outline: bridge.outline,
  front: place.front,
  aside: 0,
  turn: 0,
});

/** What an old row starts from when the new bridge has no pins: common practice, no source. mm */
const NO_PINS = { behind: 20, diameter: 5 } as const;

/** An old hole row, read from the front edge, that is this bridge's. count, spread: of its strings, for a bridge without pins. */
export const rowFrom = (
  { pins }: Bridge,
  place: BridgePlace,
  saddle: SaddlePlace,
  count: number,
  spread: number,
): FormerRow => ({
  kind: 'row',
  count,
  spread: pins?.spread ?? spread,
  distance: place.pinRow === null ? NO_PINS.behind : place.pinRow - place.front,
  aside: 0,
  slant: pins?.row === 'parallel' ? 0 - Math.atan(saddle.slope) : 0,
  stagger: pins?.stagger ?? 0,
  diameter: pins?.hole ?? NO_PINS.diameter,
});

/** Old holes, read from the front edge, that are this bridge's pin holes. */
export const eachFrom = ({ pins, front }: BridgePlace): FormerEach => ({
  kind: 'each',
  each: pins.map(({ centre, diameter }, index) => ({
    id: `h${index + 1}`,
    x: centre.x,
    y: centre.y - front,
    diameter,
  })),
});

/** An old slot, read from the front edge, that is this bridge's. */
export const slotFrom = ({ slot }: Bridge, place: BridgePlace, cut: SlotPlace, saddle: SaddlePlace): FormerSlot => ({
  from: 'front',
  distance: cut.front - place.front,
  aside: 0,
  slant: 0 - Math.atan(saddle.slope),
  length: slot.length,
  width: slot.width,
  depth: slot.depth,
  ends: slot.ends,
});
