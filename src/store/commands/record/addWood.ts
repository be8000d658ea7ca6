import type { WoodUsed } from '../../../core/document/buildTypes';
import { MOST_WOODS } from '../../../core/document/mostOfBuild';
import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withWoods } from './withWoods';

const freeId = (woods: readonly WoodUsed[]): string => {
  const taken = new Set(woods.map(({ id }) => id));
  let number = woods.length + 1;
  while (taken.has(`w${number}`)) number += 1;
  return `w${number}`;
};

/** One more wood, of this part; its species and origin are to be told. Codes: build.none, woods.full. */
export const addWood = (project: Project, part: string): Result<Project> =>
  withWoods(project, (woods) =>
    woods.length < MOST_WOODS
      ? ok([...woods, { id: freeId(woods), part, species: '', origin: '' }])
      : fail('build.woods', 'woods.full', `There is room for ${MOST_WOODS} woods.`),
  );
