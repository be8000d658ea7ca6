import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { plateUnderPins } from './plateUnderPins';
import { withBody } from './withBody';

/**
 * The plate moved under the middle of the pins, or of a bridge without pins. Codes: body.none, body.noPlate, and those of the
 * bridge in place when it could not be computed.
 */
export const centrePlate = (project: Project): Result<Project> =>
  withBody(project, (body) => {
    if (body.plate === null) return fail('body.plate', 'body.noPlate', 'Expected a bridge plate.');
    const { bridge } = createDerive()(project);
    if (!bridge.ok) return bridge;
    return ok({ ...body, plate: plateUnderPins(body.plate, body, project.instrument.hand, bridge.value) });
  });
