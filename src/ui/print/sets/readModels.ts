import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';

/** More bytes than a project takes: what is longer is something else, and is refused by its reader. */
const MOST_BYTES = 15_000_001;

/** Models from files that were chosen together, and what was wrong with those that are none. */
export interface ReadModels {
  readonly models: readonly Project[];
  readonly problems: readonly string[];
}

/** Reads project files one after another; a file that is none is named with the reason, the others are taken. */
export const readModels = async (
  files: readonly Pick<File, 'name' | 'slice'>[],
  decode: (text: string) => Result<Project>,
): Promise<ReadModels> => {
  const models: Project[] = [];
  const problems: string[] = [];
  for (const file of files) {
    try {
      const read = decode(await file.slice(0, MOST_BYTES).text());
      if (read.ok) models.push(read.value);
      else problems.push(`${file.name}: ${read.issues[0]?.message ?? ''}`);
    } catch (error) {
      problems.push(`${file.name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return { models, problems };
};
