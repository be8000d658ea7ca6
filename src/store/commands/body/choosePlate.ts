import { createDerive } from '../../../core/derive/createDerive';
import type { Plate } from '../../../core/document/bodyTypes';
import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { MM_PER_INCH } from '../../../core/units/mmPerInch';
import { plateUnderPins } from './plateUnderPins';
import { withBody } from './withBody';

/** A plate to start from, from memory; its thickness: frets.com, new bridge plate. */
const USUAL: Omit<Plate, 'front' | 'aside'> = {
  along: 54,
  acrossFront: 88,
  acrossBack: 140,
  thickness: 0.1 * MM_PER_INCH,
  read: false,
};

/**
 * A bridge plate under the pins, or under the bridge where it has none, to be found on the instrument; or none. Codes:
 * body.none, and those of the bridge in place when it could not be computed.
 */
export const choosePlate = (project: Project, wanted: boolean): Result<Project> =>
  withBody(project, (body) => {
    if (!wanted) return ok({ ...body, plate: null });
    const { bridge } = createDerive()(project);
    if (!bridge.ok) return bridge;
    return ok({ ...body, plate: body.plate ?? plateUnderPins(USUAL, body, project.instrument.hand, bridge.value) });
  });
