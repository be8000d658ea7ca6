import type { Body } from '../../../core/document/bodyTypes';
import type { Project } from '../../../core/document/types';
import type { Point } from '../../../core/geom/types';
import { ok, type Result } from '../../../core/result';
import { withBody } from './withBody';

const mirrored = ({ x, y }: Point): Point => ({ x: 0 - x, y });

const swapped = (body: Body): Body => ({
  ...body,
  braces: body.braces.map((brace) => ({ ...brace, from: mirrored(brace.from), to: mirrored(brace.to) })),
  plate: body.plate && { ...body.plate, aside: 0 - body.plate.aside },
  cutaway: body.cutaway && { ...body.cutaway, side: body.cutaway.side === 'treble' ? 'bass' : 'treble' },
  wireHole: body.wireHole && { ...body.wireHole, at: mirrored(body.wireHole.at) },
});

/** A body that was entered for the wrong side put right: everything changes side, names stay. Codes: body.none. */
export const swapSides = (project: Project): Result<Project> => withBody(project, (body) => ok(swapped(body)));
