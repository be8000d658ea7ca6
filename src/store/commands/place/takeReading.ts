import type { PlaceRound, RoundStage, TakenReading } from '../../../core/document/buildTypes';
import { MOST_READ_LINES, MOST_ROUNDS } from '../../../core/document/mostOfBuild';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from './withBuild';

/** A round to begin when none is open at this stage. */
export interface RoundToBegin extends Pick<PlaceRound, 'id' | 'at'> {
  readonly stage: RoundStage;
}

/** Whether readings still go into a round: the last one, at this stage, not yet accepted. */
export const openRound = (rounds: readonly PlaceRound[], stage: RoundStage): PlaceRound | null => {
  const last = rounds.at(-1);
  return last === undefined || last.accepted || last.stage !== stage ? null : last;
};

/**
 * One more reading in the round that is open at this stage, or in a new one. A model begins an instrument with it. Codes:
 * round.full (no room for more readings), round.many (no room for more rounds), reading.value.
 */
export const takeReading = (project: Project, reading: TakenReading, begin: RoundToBegin): Result<Project> =>
  withBuild(project, (build) => {
    if (!Number.isFinite(reading.value) || !(reading.sigma > 0 && Number.isFinite(reading.sigma)))
      return fail('build.rounds', 'reading.value', 'Expected a length, and a doubt above 0.');
    const open = openRound(build.rounds, begin.stage);
    if (open === null) {
      if (build.rounds.length >= MOST_ROUNDS)
        return fail('build.rounds', 'round.many', `There is room for ${MOST_ROUNDS} rounds: delete one first.`);
      return ok({ ...build, rounds: [...build.rounds, { ...begin, readings: [reading], accepted: false }] });
    }
    if (open.readings.length >= MOST_READ_LINES)
      return fail('build.rounds', 'round.full', `There is room for ${MOST_READ_LINES} readings in a round.`);
    const taken: PlaceRound = { ...open, readings: [...open.readings, reading] };
    return ok({ ...build, rounds: [...build.rounds.slice(0, -1), taken] });
  });
