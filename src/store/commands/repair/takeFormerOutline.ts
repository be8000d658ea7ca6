import type { Project } from '../../../core/document/types';
import type { Path } from '../../../core/geom/types';
import { failed, ok, type Result } from '../../../core/result';
import { takeOutline } from '../takeOutline';
import { withRepair } from './withRepair';

/**
 * A closed path, as seen from the front with the nut up, becomes the outline of the old footprint, where that lay. Codes:
 * repair.none and those of takeOutline.
 */
export const takeFormerOutline = (project: Project, path: Path): Result<Project> =>
  withRepair(project, (repair) => {
    const taken = takeOutline(project, path);
    if (!taken.ok)
      return failed(
        taken.issues.map((each) => ({ ...each, path: each.path.replace(/^bridge\./, 'repair.footprint.') })),
      );
    return ok({ ...repair, footprint: { ...repair.footprint, outline: taken.value.bridge.outline } });
  });
