import type { Mend } from '../../core/checks/types';
import { fieldAt } from '../../core/document/fieldAt';
import type { Project } from '../../core/document/types';
import { ok, type Result } from '../../core/result';
import { setField } from './setField';

/** The project with the figures that a check proposes. Codes: those of setField. */
export const mendDesign = (project: Project, { set }: Pick<Mend, 'set'>): Result<Project> => {
  let mended: Result<Project> = ok(project);
  for (const { path, value } of set)
    if (mended.ok) mended = setField(mended.value, { field: fieldAt(mended.value, path), value });
  return mended;
};
