import type { SaddlePlace, SlotPlace } from '../bridge/types';
import type { FormerSlotPlace, SlotOverlap } from './types';

/** Old and new slot under the outer strings and on the centreline, told along the centreline. */
export const slotOverlaps = (former: FormerSlotPlace, slot: SlotPlace, saddle: SaddlePlace): readonly SlotOverlap[] => {
  const oldSlope = Math.tan(former.angle);
  const oldWidth = former.width / Math.cos(former.angle);
  const width = slot.back - slot.front;
  const at = (id: SlotOverlap['id'], label: string, x: number): SlotOverlap => {
    const oldFront = former.front.y + oldSlope * (x - former.front.x);
    const front = slot.front + saddle.slope * x;
    const shared = Math.min(front + width, oldFront + oldWidth) - Math.max(front, oldFront);
    return { id, label, shared, moved: front - oldFront };
  };
  const treble = saddle.strings[0];
  const bass = saddle.strings.at(-1);
  return [
    ...(treble === undefined ? [] : [at('treble', `Under treble ${treble.name}`, treble.x)]),
    at('centre', 'On the centreline', 0),
    ...(bass === undefined ? [] : [at('bass', `Under bass ${bass.name}`, bass.x)]),
  ];
};
