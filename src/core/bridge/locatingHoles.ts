import type { Locating, Slot } from '../document/types';
import { fail, ok, type Result } from '../result';
import type { Hole, SaddlePlace, SlotPlace } from './types';

const pair = (locating: Locating, treble: Hole['centre'], bass: Hole['centre']): readonly Hole[] => [
  { id: 'locating-treble', label: 'locating pin, treble', centre: treble, diameter: locating.drill },
  { id: 'locating-bass', label: 'locating pin, bass', centre: bass, diameter: locating.drill },
];

/**
 * The two holes that register the bridge, treble first. In the slot ends they lie half a slot width in from the end, which
 * is the centre of a round end; or they are the outer pin holes. Instrument frame.
 */
export const locatingHoles = (
  locating: Locating,
  slot: Slot,
  slotAt: SlotPlace,
  saddle: SaddlePlace,
  pins: readonly Hole[],
): Result<readonly Hole[]> => {
  if (locating.site === 'outer-pin-holes') {
    const treble = pins[0];
    const bass = pins.at(-1);
    if (treble === undefined || bass === undefined || treble === bass)
      return fail('bridge.locating.site', 'locating.pins', 'This bridge has no outer pin holes; use the slot ends.');
    return ok(pair(locating, treble.centre, bass.centre));
  }
  const angle = Math.atan(saddle.slope);
  const inset = slot.length / 2 - slot.width / 2;
  const x = inset * Math.cos(angle);
  const y = inset * Math.sin(angle);
  return ok(pair(locating, { x, y: slotAt.middle + y }, { x: -x, y: slotAt.middle - y }));
};
