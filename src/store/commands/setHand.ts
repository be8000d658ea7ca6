import type { Hand, Project } from '../../core/document/types';
import { ok, type Result } from '../../core/result';

/** The same instrument for the other hand; no figure changes. */
export const setHand = (project: Project, hand: Hand): Result<Project> =>
  ok({ ...project, instrument: { ...project.instrument, hand } });
