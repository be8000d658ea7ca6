import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { changeRound } from './changeRound';

/** Codes: round.missing. */
export const removeRound = (project: Project, id: string): Result<Project> => changeRound(project, id, () => null);
