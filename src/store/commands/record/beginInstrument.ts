import { newBuild } from '../../../core/document/newBuild';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';

/** The design in hand becomes one instrument, with nothing read or done yet. Code: build.there. */
export const beginInstrument = (project: Project): Result<Project> =>
  project.build === null
    ? ok({ ...project, build: newBuild() })
    : fail('build', 'build.there', 'Expected a model, and this is one instrument already.');
