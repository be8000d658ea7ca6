import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { changeBrace } from './braceList';
import { withBody } from './withBody';

/** Whether a brace was found on this instrument. Codes: body.none, body.noBrace. */
export const markBraceFound = (project: Project, id: string, found: boolean): Result<Project> =>
  withBody(project, (body) => changeBrace(body, id, (brace) => ({ ...brace, read: found })));
