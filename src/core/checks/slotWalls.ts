import type { WholeDesign } from './designed';
import { type Finding, setOne } from './finding';
import { slotGaps } from './slotGaps';
import { downward, upward } from './upward';
import { placedWall, type Wall } from './wallCheck';

const FROM_FRONT = 'bridge.slot.fromFront';
const PUT_SLOT = 'Front edge to slot {0}';

/** Least wood between the slot and the edge of the bridge: ahead of it, beyond its ends, and, without pins, behind it. */
export const slotWalls = ({ project, saddle, slot, bridge, limits }: WholeDesign): readonly Finding[] => {
  const { slot: design, pins } = project.bridge;
  const { front, ends, back } = slotGaps(bridge.footprint.outline, design, slot);
  const limit = ['wallAroundSlot', limits.wallAroundSlot] as const;
  const stretch = Math.hypot(1, saddle.slope);
  const short = ({ wall }: Wall): number => limits.wallAroundSlot.value - wall;
  return [
    ...(front === null
      ? []
      : [
          {
            ...placedWall('slot-front', 'The slot clears the front edge', front, limit),
            tries: [setOne(FROM_FRONT, upward(design.fromFront + short(front) * stretch), PUT_SLOT)],
          },
        ]),
    ...(ends === null
      ? []
      : [
          {
            ...placedWall('slot-ends', 'The slot clears the ends of the bridge', ends, limit),
            tries: [setOne('bridge.slot.length', downward(design.length - 2 * short(ends)), 'Slot length {0}')],
          },
        ]),
    ...(back === null || pins !== null
      ? []
      : [
          {
            ...placedWall('slot-back', 'The slot clears the back edge', back, limit),
            tries: [setOne(FROM_FRONT, downward(design.fromFront - short(back) * stretch), PUT_SLOT)],
          },
        ]),
  ];
};
