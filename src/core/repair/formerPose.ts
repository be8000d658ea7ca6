import type { FormerDatum, FormerFootprint } from '../document/repairTypes';
import type { Pose } from '../placement/poseTypes';

/** Where the frame lies in which a place is told: that of the old bridge (its front edge, turned with it), or the instrument's. */
export const formerPose = (from: FormerDatum, { aside, front, turn }: FormerFootprint): Pose =>
  from === 'nut' ? { x: 0, y: 0, angle: 0 } : { x: aside, y: front, angle: -turn };
