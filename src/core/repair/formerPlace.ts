import { footprintOf } from '../bridge/footprintOf';
import type { Repair } from '../document/repairTypes';
import { transformPath } from '../geom/transformPath';
import { validatePath } from '../geom/validatePath';
import { fail, failed, type Issue, ok, type Result } from '../result';
import { formerHoles } from './formerHoles';
import { formerPose } from './formerPose';
import { formerSlot } from './formerSlot';
import type { FormerPlace } from './types';

/** Faults of a bridge's fields told as those of the old bridge. */
const asFormer = (issues: readonly Issue[]): readonly Issue[] =>
  issues.map((each) => ({
    ...each,
    path: each.path.replace(/^bridge\./, 'repair.footprint.'),
    message: `Of the old bridge: ${each.message}`,
  }));

/** The old bridge where it lay. Codes: those of its shape and of validatePath, path.open, slot.short. */
export const formerPlace = ({ footprint, holes, slot }: Repair): Result<FormerPlace> => {
  const shape = footprintOf(footprint.outline);
  if (!shape.ok) return failed(asFormer(shape.issues));
  const valid = validatePath(shape.value.outline);
  if (!valid.ok) return failed(asFormer(valid.issues));
  if (!valid.value.closed)
    return fail('repair.footprint', 'path.open', 'Expected a closed outline of the old bridge, got an open line.');
  const filled = slot === null ? ok(null) : formerSlot(slot, footprint);
  if (!filled.ok) return filled;
  const pose = formerPose('front', footprint);
  return ok({
    outline: transformPath(valid.value, pose.angle, pose),
    holes: holes === null ? [] : formerHoles(holes, footprint),
    slot: filled.value,
  });
};
