import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { roundDecimal } from '../../../core/units/roundDecimal';
import { withBody } from './withBody';

/** Its middle and size as shares of the scale, from memory: 148 mm ahead of the octave line and 4 in across on 645. */
const AHEAD = 148 / 645;
const ACROSS = 101.6 / 645;

/** A soundhole, where one usually is until it is measured; or none. Codes: body.none, and those of the board. */
export const chooseSoundhole = (project: Project, wanted: boolean): Result<Project> =>
  withBody(project, (body) => {
    if (!wanted) return ok({ ...body, soundhole: null });
    const { board, scale } = createDerive()(project);
    if (!board.ok) return board;
    if (!scale.ok) return scale;
    const { scaleLength } = scale.value;
    const usual = {
      centre: roundDecimal(board.value.octave - AHEAD * scaleLength, 1),
      across: roundDecimal(ACROSS * scaleLength, 1),
      along: null,
    };
    return ok({ ...body, soundhole: body.soundhole ?? usual });
  });
