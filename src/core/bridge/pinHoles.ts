import type { Pins } from '../document/types';
import type { Hole, SaddlePlace, SlotPlace } from './types';

/** How far ahead of its middle a row on an arc lies, `along` from there: 0 in the middle, `rise` at `half`. */
const arcAhead = (along: number, half: number, rise: number): number => {
  if (rise === 0) return 0;
  const radius = (half ** 2 + rise ** 2) / (2 * rise);
  // The sagitta so that a vast radius leaves 0 and not the difference of two vast figures.
  const size = Math.abs(radius);
  return (Math.sign(rise) * along ** 2) / (size + Math.sqrt(Math.max(0, size ** 2 - along ** 2)));
};

/**
 * Pilot holes for the bridge pins, string 1 first, evenly spaced along their row with its middle on the centreline. A
 * parallel row has the slant of the slot; a square one none; on an arc they are evenly spaced along the chord, which has
 * the slant of the slot. With a stagger every second pin stands in a row behind it. Instrument frame.
 */
export const pinHoles = (pins: Pins, count: number, slot: SlotPlace, saddle: SaddlePlace): readonly Hole[] => {
  const angle = pins.row === 'square' ? 0 : Math.atan(saddle.slope);
  const middle = slot.back + pins.from;
  const half = pins.spread / 2;
  return Array.from({ length: count }, (_, index) => {
    const along = count === 1 ? 0 : half - (index * pins.spread) / (count - 1);
    const ahead = pins.row === 'arc' ? arcAhead(along, half, pins.rise) : 0;
    return {
      id: `pin-${index + 1}`,
      label: `pin ${index + 1}`,
      centre: {
        x: along * Math.cos(angle) + ahead * Math.sin(angle),
        y: middle + along * Math.sin(angle) - ahead * Math.cos(angle) + (index % 2) * pins.stagger,
      },
      diameter: pins.hole,
    };
  });
};
