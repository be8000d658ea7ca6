import type { Issue } from '../result';
import { allFields } from './fieldAt';
import { fieldValue } from './fieldValue';
import type { Project } from './types';
import { validateField } from './validateField';

/** Every value of a project against its own row of the field table. What two fields disagree on is not judged here. */
export const validateProject = (project: Project): readonly Issue[] =>
  allFields(project).flatMap((field) => {
    const value = fieldValue(project, field.path);
    if (field.path.startsWith('compensation.own.') && value === null) return [];
    return validateField(field, value);
  });
