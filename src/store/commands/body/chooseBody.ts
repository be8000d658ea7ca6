import type { Body } from '../../../core/document/bodyTypes';
import type { Project } from '../../../core/document/types';
import { ok, type Result } from '../../../core/result';

const NOTHING_FOUND: Body = {
  hand: null,
  from: 'octave',
  across: null,
  tail: null,
  braces: [],
  plate: null,
  soundhole: null,
  cutaway: null,
  wireHole: null,
};

/** Something is said of what lies beneath and around the bridge, with nothing found yet; or no longer. */
export const chooseBody = (project: Project, wanted: boolean): Result<Project> =>
  ok({ ...project, body: wanted ? (project.body ?? NOTHING_FOUND) : null });
