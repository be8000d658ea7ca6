import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { editOutline } from './editOutline';

/**
 * The outline of a shape turned into one that is drawn freely, as it is. Codes: outline.drawn when it is one already, those
 * of the shape.
 */
export const drawFreely = (project: Project): Result<Project> =>
  project.bridge.outline.kind === 'drawn'
    ? fail('bridge.outline', 'outline.drawn', 'The outline is drawn freely already.')
    : editOutline(project, ({ path }) => ok({ path }));
