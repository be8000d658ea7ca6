import { slotFrame } from '../slotFrame';
import type { DesignCheck } from '../types';
import { checkPart } from '../wallCheck';
import type { Bodied } from './bodied';

const NAME = 'The wire hole lies inside the slot';
/** Rounding that no wood shows, mm. */
const SAME_MM = 1e-6;

/** Whether the wire of a pickup goes down inside the slot, so that the drill leaves its walls alone. */
export const wireInSlot = ({ place: { wireHole }, design, slot }: Bodied): readonly DesignCheck[] => {
  if (wireHole === null) return [];
  const wall = 0 - slotFrame(design.slot, slot).outside(wireHole.centre) - wireHole.diameter / 2;
  const about = {
    id: 'wire-slot',
    source: 'common practice, no source',
    at: [wireHole.centre],
    part: checkPart(NAME),
    lengths: [Math.abs(wall), wireHole.diameter, design.slot.width],
  };
  if (wall >= -SAME_MM) return [{ ...about, verdict: 'good', message: `${NAME}, {0} from its walls.` }];
  const wide = wireHole.diameter > design.slot.width + SAME_MM;
  return [
    {
      ...about,
      verdict: 'wrong',
      message: wide
        ? 'A wire hole of {1} is wider than the slot of {2}: it would cut into its walls.'
        : 'The wire hole runs {0} out of the slot, into its walls.',
    },
  ];
};
