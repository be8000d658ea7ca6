import type { TakenReading } from '../../../core/document/buildTypes';
import type { Project } from '../../../core/document/types';
import { fail, type Result } from '../../../core/result';
import { changeRound } from './changeRound';

/** What the readings of a line were taken with after all, in one round. Codes: round.missing, reading.value (a sigma above 0). */
export const chooseTool = (
  project: Project,
  id: string,
  line: string,
  { tool, sigma }: Pick<TakenReading, 'tool' | 'sigma'>,
): Result<Project> => {
  if (!(sigma > 0 && Number.isFinite(sigma))) return fail('build.rounds', 'reading.value', 'Expected a doubt above 0.');
  return changeRound(project, id, (round) => ({
    ...round,
    readings: round.readings.map((reading) => (reading.line === line ? { ...reading, tool, sigma } : reading)),
  }));
};
