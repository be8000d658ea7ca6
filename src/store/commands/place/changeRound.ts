import type { PlaceRound } from '../../../core/document/buildTypes';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withBuild } from './withBuild';

/** One round changed, or taken out for null. Codes: round.missing. */
export const changeRound = (
  project: Project,
  id: string,
  change: (round: PlaceRound) => PlaceRound | null,
): Result<Project> => {
  const rounds = project.build?.rounds ?? [];
  if (!rounds.some((round) => round.id === id))
    return fail('build.rounds', 'round.missing', 'Expected a round that is kept here.');
  return withBuild(project, (build) =>
    ok({ ...build, rounds: build.rounds.flatMap((round) => (round.id === id ? (change(round) ?? []) : round)) }),
  );
};
