import type { PlaceRound, RoundStage, TakenReading } from '../../../core/document/buildTypes';
import { MOST_READ_LINES, MOST_ROUNDS } from '../../../core/document/mostOfBuild';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from './withBuild';

/** A round to read in, or to begin when there is none of that id and none is open at this stage. */
export interface RoundToBegin extends Pick<PlaceRound, 'id' | 'at'> {
  readonly stage: RoundStage;
}

/** Whether readings still go into a round by themselves: the last one, at this stage, not yet accepted. */
export const openRound = (rounds: readonly PlaceRound[], stage: RoundStage): PlaceRound | null => {
  const last = rounds.at(-1);
  return last === undefined || last.accepted || last.stage !== stage ? null : last;
};

/**
 * One more reading in the round of this id, in the one that is open at this stage, or in a new one. A model begins an
 * instrument with it. Codes: round.accepted (reopen it first), round.full (no room for more readings), round.many (no room
 * for more rounds), reading.value.
 */
export const takeReading = (project: Project, reading: TakenReading, begin: RoundToBegin): Result<Project> =>
  withBuild(project, (build) => {
    const { rounds } = build;
    if (!Number.isFinite(reading.value) || !(reading.sigma > 0 && Number.isFinite(reading.sigma)))
      return fail('build.rounds', 'reading.value', 'Expected a length, and a doubt above 0.');
    const into = rounds.find(({ id }) => id === begin.id) ?? openRound(rounds, begin.stage);
    if (into === null) {
      if (rounds.length >= MOST_ROUNDS)
        return fail('build.rounds', 'round.many', `There is room for ${MOST_ROUNDS} rounds: delete one first.`);
      return ok({ ...build, rounds: [...rounds, { ...begin, readings: [reading], accepted: false }] });
    }
    if (into.accepted)
      return fail('build.rounds', 'round.accepted', 'This round is accepted: reopen it to read more in it.');
    if (into.readings.length >= MOST_READ_LINES)
      return fail('build.rounds', 'round.full', `There is room for ${MOST_READ_LINES} readings in a round.`);
    const taken: PlaceRound = { ...into, readings: [...into.readings, reading] };
    return ok({ ...build, rounds: rounds.map((round) => (round === into ? taken : round)) });
  });
