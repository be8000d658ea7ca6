import type { Project } from '../../core/document/types';
import { ok, type Result } from '../../core/result';

/** A string from 0, wound or plain. */
export const chooseWinding = (project: Project, index: number, wound: boolean): Result<Project> =>
  ok({ ...project, strings: project.strings.map((each, place) => (place === index ? { ...each, wound } : each)) });
