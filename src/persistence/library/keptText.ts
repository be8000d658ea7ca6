import type { Project } from '../../core/document/types';
import { fail, type Result } from '../../core/result';
import { decodeProject } from '../decodeProject';
import { encodeProject } from '../encodeProject';
import { sumOf } from '../sumOf';
import type { KeptText } from './database';
import { missing } from './missing';

/** A project as it is kept. Throws when it is not one that `decodeProject` would take. */
export const keptText = (project: Project): KeptText => {
  const text = encodeProject(project);
  return { text, sum: sumOf(text) };
};

/**
 * The project in a kept text. Nothing that was changed on the way to the disk and back opens as good. Codes:
 * library.missing, library.damaged, those of decodeProject.
 */
export const readKept = (kept: KeptText | undefined): Result<Project> => {
  if (kept === undefined) return missing();
  if (typeof kept.text !== 'string' || sumOf(kept.text) !== kept.sum)
    return fail('', 'library.damaged', 'What the browser kept of it is damaged: it does not match its own sum.');
  return decodeProject(kept.text);
};
