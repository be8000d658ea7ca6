import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { changeBrace } from './braceList';
import { withBody } from './withBody';

/** One brace less. Codes: body.none, body.noBrace. */
export const removeBrace = (project: Project, id: string): Result<Project> =>
  withBody(project, (body) => changeBrace(body, id, () => null));
