import type { Project } from '../../core/document/types';
import { stringsOfSet } from '../../core/kinds/stringsOfSet';
import { fail, ok, type Result } from '../../core/result';

/**
 * The strings of a set. Own compensation stays with the strings that both sets have; what other strings taught goes. Code
 * strings.unknown.
 */
export const chooseStringSet = (project: Project, setId: string): Result<Project> => {
  const strings = stringsOfSet(setId);
  if (strings.length === 0) return fail('strings', 'strings.unknown', 'There is no such string set.');
  const kept = Object.entries(project.compensation.own).filter(([id]) => strings.some((string) => string.id === id));
  const own = Object.fromEntries(kept);
  return ok({ ...project, strings, compensation: { ...project.compensation, own, learned: null } });
};
