import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { roundDecimal } from '../../../core/units/roundDecimal';
import { withBody } from './withBody';

/** From the body join to where a cutaway ends, as a share of the scale, and from the centreline to it, mm: from memory. */
const BEHIND_JOIN = 0.17;
const ASIDE = 40;

/** A cutaway on the treble side, to be measured; or none. Codes: body.none, and those of the board. */
export const chooseCutaway = (project: Project, wanted: boolean): Result<Project> =>
  withBody(project, (body) => {
    if (!wanted) return ok({ ...body, cutaway: null });
    const { board, scale } = createDerive()(project);
    if (!board.ok) return board;
    if (!scale.ok) return scale;
    const end = roundDecimal(board.value.bodyJoin + BEHIND_JOIN * scale.value.scaleLength, 1);
    return ok({ ...body, cutaway: body.cutaway ?? { side: 'treble', aside: ASIDE, end } });
  });
