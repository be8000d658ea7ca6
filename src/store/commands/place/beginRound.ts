import { MOST_ROUNDS } from '../../../core/document/mostOfBuild';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import type { RoundToBegin } from './takeReading';
import { withBuild } from './withBuild';

/** A new round, with nothing read yet. Codes: round.many. */
export const beginRound = (project: Project, round: RoundToBegin): Result<Project> =>
  withBuild(project, (build) =>
    build.rounds.length >= MOST_ROUNDS
      ? fail('build.rounds', 'round.many', `There is room for ${MOST_ROUNDS} rounds: delete one first.`)
      : ok({ ...build, rounds: [...build.rounds, { ...round, readings: [], accepted: false }] }),
  );
