import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBody } from './withBody';

/** Whether the plate was found on this instrument. Codes: body.none, body.noPlate. */
export const markPlateFound = (project: Project, found: boolean): Result<Project> =>
  withBody(project, (body) =>
    body.plate === null
      ? fail('body.plate', 'body.noPlate', 'Expected a bridge plate.')
      : ok({ ...body, plate: { ...body.plate, read: found } }),
  );
