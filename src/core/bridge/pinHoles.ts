import type { Pins } from '../document/types';
import type { Hole, SaddlePlace, SlotPlace } from './types';

/**
 * Pilot holes for the bridge pins, string 1 first, evenly spaced along their row with its middle on the centreline. A
 * parallel row has the slant of the slot; a square one none. With a stagger every second pin stands in a row behind it.
 * Instrument frame.
 */
export const pinHoles = (pins: Pins, count: number, slot: SlotPlace, saddle: SaddlePlace): readonly Hole[] => {
  const angle = pins.row === 'parallel' ? Math.atan(saddle.slope) : 0;
  const middle = slot.back + pins.from;
  return Array.from({ length: count }, (_, index) => {
    const along = count === 1 ? 0 : pins.spread / 2 - (index * pins.spread) / (count - 1);
    return {
      id: `pin-${index + 1}`,
      label: `pin ${index + 1}`,
      centre: { x: along * Math.cos(angle), y: middle + along * Math.sin(angle) + (index % 2) * pins.stagger },
      diameter: pins.hole,
    };
  });
};
