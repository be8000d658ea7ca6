import type { Brace } from '../../../core/document/bodyTypes';
import type { Project } from '../../../core/document/types';
import type { Point } from '../../../core/geom/types';
import { fail, type Result } from '../../../core/result';
import { withBrace } from './braceList';
import { otherSideName } from './otherSideName';
import { withBody } from './withBody';

const mirrored = ({ x, y }: Point): Point => ({ x: 0 - x, y });

/** One more brace: this one's mirror image on the other side, not found yet. Codes: body.none, body.noBrace, body.bracesFull. */
export const mirrorBrace = (project: Project, id: string): Result<Project> =>
  withBody(project, (body) => {
    const brace = body.braces.find((each) => each.id === id);
    if (brace === undefined) return fail('body.braces', 'body.noBrace', 'There is no such brace.');
    const { id: _, ...own } = brace;
    const other: Omit<Brace, 'id'> = {
      ...own,
      name: otherSideName(own.name),
      from: mirrored(own.from),
      to: mirrored(own.to),
      read: false,
    };
    return withBrace(body, other);
  });
