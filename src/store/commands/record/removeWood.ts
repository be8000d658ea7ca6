import type { Project } from '../../../core/document/types';
import { fail, ok, type Result } from '../../../core/result';
import { withWoods } from './withWoods';

/** Takes a wood away. Codes: build.none, woods.unknown. */
export const removeWood = (project: Project, id: string): Result<Project> =>
  withWoods(project, (woods) => {
    const kept = woods.filter((wood) => wood.id !== id);
    return kept.length < woods.length
      ? ok(kept)
      : fail('build.woods', 'woods.unknown', 'There is no such wood to take away.');
  });
