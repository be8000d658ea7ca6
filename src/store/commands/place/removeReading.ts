import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { changeRound } from './changeRound';

/** A reading taken out of its round. Codes: round.missing. */
export const removeReading = (project: Project, id: string, reading: string): Result<Project> =>
  changeRound(project, id, (round) => ({ ...round, readings: round.readings.filter((each) => each.id !== reading) }));
