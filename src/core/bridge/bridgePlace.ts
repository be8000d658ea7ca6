import type { Bridge } from '../document/types';
import { pathArea } from '../geom/pathArea';
import { add } from '../geom/points';
import { transformPath } from '../geom/transformPath';
import type { Path, Point } from '../geom/types';
import { ok, type Result } from '../result';
import { footprintOf } from './footprintOf';
import { locatingHoles } from './locatingHoles';
import { pinHoles } from './pinHoles';
import type { BridgePlace, SaddlePlace, SlotPlace } from './types';

/** The whole bridge in the instrument frame, hung on its slot: the front edge lies `fromFront` ahead of the slot's front wall. */
export const bridgePlace = (
  bridge: Bridge,
  stringCount: number,
  saddle: SaddlePlace,
  slot: SlotPlace,
): Result<BridgePlace> => {
  const shape = footprintOf(bridge.outline);
  if (!shape.ok) return shape;
  const front = slot.front - bridge.slot.fromFront;
  const shift: Point = { x: 0, y: front };
  const place = (path: Path): Path => transformPath(path, 0, shift);
  const pins = bridge.pins === null ? [] : pinHoles(bridge.pins, stringCount, slot, saddle);
  const locating = locatingHoles(bridge.locating, bridge.slot, slot, saddle, pins, shape.value.outline, front);
  if (!locating.ok) return locating;
  const points = shape.value.points.map((point) => ({ ...point, at: add(point.at, shift) }));
  return ok({
    footprint: { outline: place(shape.value.outline), points, faceLines: shape.value.faceLines.map(place) },
    front,
    area: pathArea(shape.value.outline),
    pins,
    pinRow: bridge.pins === null ? null : slot.back + bridge.pins.from,
    locating: locating.value,
    points: [...points, ...locating.value.map(({ id, label, centre }) => ({ id, label, at: centre }))],
  });
};
