import type { BridgePlace, SlotPlace } from '../bridge/types';
import { distance, subtract } from '../geom/points';
import { drawHoles } from './drawHoles';
import { polyline } from './polyline';
import type { Item } from './types';

/** How far the slot's centreline runs beyond its ends, mm. */
const BEYOND_SLOT = 5;

/** Footprint, slot, pin holes and locating-pin holes, instrument frame. */
export const drawBridge = (bridge: BridgePlace, slot: SlotPlace): readonly Item[] => {
  const { treble, bass } = slot.ends;
  const length = distance(treble, bass);
  const along = subtract(treble, bass);
  const beyond = { x: (along.x / length) * BEYOND_SLOT, y: (along.y / length) * BEYOND_SLOT };
  return [
    {
      kind: 'path',
      id: 'footprint',
      part: 'footprint',
      role: 'outline',
      layer: 'bridge',
      path: bridge.footprint.outline,
    },
    ...bridge.footprint.faceLines.map(
      (path, index): Item => ({
        kind: 'path',
        id: `face-${index}`,
        part: 'upper face',
        role: 'slot',
        layer: 'bridge',
        path,
      }),
    ),
    { kind: 'path', id: 'slot', part: 'slot', role: 'slot', layer: 'slot', path: slot.outline },
    {
      kind: 'path',
      id: 'slot-centreline',
      part: 'slot',
      role: 'centreline',
      layer: 'slot',
      path: polyline(subtract(bass, beyond), { x: treble.x + beyond.x, y: treble.y + beyond.y }),
    },
    ...drawHoles(bridge.pins, 'pins'),
    ...drawHoles(bridge.locating, 'locating'),
  ];
};
