import { bodyFromSet } from '../../../core/body/bodyFromSet';
import { BRACING_SETS } from '../../../core/body/bracingSets';
import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { fail, failed, ok, type Result } from '../../../core/result';
import { withBody } from './withBody';

/**
 * A usual bracing in place of all braces, the plate and the soundhole, laid to this instrument's octave line and scale, to be
 * found on the instrument. Codes: body.none, body.noSet, and those of the board when it could not be computed.
 */
export const takeBracing = (project: Project, id: string): Result<Project> =>
  withBody(project, (body) => {
    const set = BRACING_SETS.find((each) => each.id === id);
    if (set === undefined) return fail('body.braces', 'body.noSet', 'There is no such bracing.');
    const { board, scale } = createDerive()(project);
    if (!board.ok || !scale.ok) return failed([board, scale].flatMap((part) => (part.ok ? [] : part.issues)));
    return ok({ ...body, ...bodyFromSet(set, board.value.octave, scale.value.scaleLength) });
  });
