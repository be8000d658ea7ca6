import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { changeRound } from './changeRound';

/** The maker takes the place as good, or takes that back. Codes: round.missing. */
export const acceptRound = (project: Project, id: string, accepted: boolean): Result<Project> =>
  changeRound(project, id, (round) => ({ ...round, accepted }));
