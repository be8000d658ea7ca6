import type { Body } from '../../../core/document/bodyTypes';
import type { Project } from '../../../core/document/types';
import { fail, type Result } from '../../../core/result';
import { takeBody } from './takeBody';

/**
 * The project with its body changed. Codes: body.none when nothing is said of it, those of `change`, and those of
 * validateField for figures that have no room in their fields.
 */
export const withBody = (project: Project, change: (body: Body) => Result<Body>): Result<Project> => {
  if (project.body === null) return fail('body', 'body.none', 'Expected something to be said of the body first.');
  const body = change(project.body);
  return body.ok ? takeBody(project, body.value) : body;
};
