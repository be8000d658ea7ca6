import { slotPlace } from '../bridge/slotPlace';
import type { FormerFootprint, FormerSlot } from '../document/repairTypes';
import { transformPath } from '../geom/transformPath';
import { placePoint } from '../placement/rigid/placePoint';
import { failed, ok, type Result } from '../result';
import { formerPose } from './formerPose';
import type { FormerSlotPlace } from './types';

/** The old slot in place, instrument frame. Codes: slot.short. */
export const formerSlot = (slot: FormerSlot, footprint: FormerFootprint): Result<FormerSlotPlace> => {
  const { distance, aside, slant, width } = slot;
  // A slot whose strings break at its front wall lies with that wall on their line.
  const local = slotPlace(
    { ...slot, fromFront: 0, run: 'stopped', crown: 0 },
    { centre: distance, slope: Math.tan(-slant), strings: [] },
  );
  if (!local.ok) return failed(local.issues.map((each) => ({ ...each, path: 'repair.slot.length' })));
  const pose = formerPose(slot.from, footprint);
  const shifted = transformPath(local.value.outline, 0, { x: aside, y: 0 });
  return ok({
    outline: transformPath(shifted, pose.angle, pose),
    front: placePoint(pose, { x: aside, y: distance }),
    angle: pose.angle - slant,
    width,
  });
};
