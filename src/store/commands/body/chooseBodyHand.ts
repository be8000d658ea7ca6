import type { Hand, Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';
import { withBody } from './withBody';

/** Which hand the body was built for; null: as the instrument. No figure changes. Codes: body.none. */
export const chooseBodyHand = (project: Project, hand: Hand | null): Result<Project> =>
  withBody(project, (body) => ok({ ...body, hand }));
